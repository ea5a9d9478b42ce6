//! The lines that pieces are cut and sewn by: pieces alike together.

use std::collections::BTreeMap;

use pelmet_packet::{Packet, Panel, Piece, Place, Relief, Window};

use crate::parts::every_piece;

/// Pieces that are cut and sewn by the same lines.
pub(crate) struct SharedOutline<'a> {
    /// The first of them, which stands for all.
    pub(crate) piece: &'a Piece,
    /// The panel of that piece.
    pub(crate) panel: &'a Panel,
    /// All of them, as they come in the packet.
    pub(crate) pieces: Vec<(&'a Window, &'a Piece)>,
}

/// Every line that something of the job is cut by, in the order of its pieces.
pub(crate) fn outlines(packet: &Packet) -> Vec<SharedOutline<'_>> {
    let mut outlines: Vec<SharedOutline<'_>> = Vec::new();
    // Outlines are long to compare, and only pieces of one size can have the same.
    let mut of_size: BTreeMap<[u64; 2], Vec<usize>> = BTreeMap::new();
    for (window, panel, piece) in every_piece(packet) {
        let size = [&piece.cut_width, &piece.cut_length].map(|length| length.mm.to_bits());
        let of_size = of_size.entry(size).or_default();
        let fits = |index: &usize| outlines.get(*index).is_some_and(|of| of.fits(piece));
        match of_size.iter().copied().find(fits) {
            Some(index) => {
                if let Some(outline) = outlines.get_mut(index) {
                    outline.pieces.push((window, piece));
                }
            }
            None => {
                of_size.push(outlines.len());
                outlines.push(SharedOutline {
                    piece,
                    panel,
                    pieces: vec![(window, piece)],
                });
            }
        }
    }
    outlines
}

impl SharedOutline<'_> {
    /// What its file is called by: the label of its first piece, with hyphens for blanks.
    pub(crate) fn file_name(&self) -> String {
        self.piece.label.replace(' ', "-")
    }

    /// What is cut by it, each kind of piece in words: `2 x wing face of kelp-stripe, window bay`.
    pub(crate) fn cut(&self) -> Vec<String> {
        let cut = |(window, piece): &(&Window, &Piece)| {
            let turned = if piece.mirrored { ", turned over" } else { "" };
            format!(
                "{} x {} of {}, window {}{turned}",
                piece.quantity, piece.label, piece.cloth, window.name
            )
        };
        self.pieces.iter().map(cut).collect()
    }

    /// The size of its pieces, every allowance included: `14 3/4 in x 21 7/8 in`.
    pub(crate) fn size(&self) -> String {
        let piece = self.piece;
        format!("{} x {}", piece.cut_width.text, piece.cut_length.text)
    }

    /// The centres of the motifs that its pieces carry, each place once.
    pub(crate) fn motifs(&self) -> Vec<&Place> {
        let mut motifs: Vec<&Place> = Vec::new();
        for motif in self
            .pieces
            .iter()
            .filter_map(|(_, piece)| piece.motif.as_ref())
        {
            if !motifs.contains(&motif) {
                motifs.push(motif);
            }
        }
        motifs
    }

    /// What the allowance calls for at a corner of the panel, after its number.
    pub(crate) fn called_for(&self, number: u32) -> &'static str {
        let mut corners = self.panel.outline.iter();
        let corner = corners.find(|corner| corner.number == number);
        match corner.and_then(|corner| corner.relief) {
            Some(Relief::Snip) => " snip",
            Some(Relief::Trim) => " trim",
            Some(Relief::Mitre) => " mitre",
            None => "",
        }
    }

    /// Whether a piece has the same lines.
    fn fits(&self, piece: &Piece) -> bool {
        let own = self.piece;
        own.outline_from == piece.outline_from
            && own.railroaded == piece.railroaded
            && own.folded_at == piece.folded_at
            && own.joined == piece.joined
            && own.outline == piece.outline
            && own.sewn == piece.sewn
    }
}
