//! The lines that pieces are cut and sewn by: pieces alike together.

mod drawing;
mod join_seams;
mod whole;

pub(crate) use drawing::outline_drawing;
pub(crate) use join_seams::join_seams;
pub(crate) use whole::{Arcs, OutlineVertex, WholePiece};

use std::collections::BTreeMap;

use pelmet_packet::{OutlinePoint, Packet, Panel, Piece, Place, Window};

use crate::drawing::{PaperPoint, at};

/// Pieces that are cut and sewn by the same lines.
pub(crate) struct SharedOutline<'a> {
    /// The first of them, which stands for all.
    pub(crate) piece: &'a Piece,
    /// The panel it is a part of.
    pub(crate) panel: &'a Panel,
    /// All of them, as they come in the packet.
    pub(crate) pieces: Vec<(&'a Window, &'a Piece)>,
}

/// Every line that something of the job is cut by, in the order of its pieces.
pub(crate) fn outlines(packet: &Packet) -> Vec<SharedOutline<'_>> {
    let mut outlines: Vec<SharedOutline<'_>> = Vec::new();
    // Only pieces of one size can have the same lines.
    let mut of_size: BTreeMap<[u64; 2], Vec<usize>> = BTreeMap::new();
    for (window, panel, piece) in pieces(packet) {
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

/// Every kind of piece with the panel and the window it is a part of.
fn pieces(packet: &Packet) -> impl Iterator<Item = (&Window, &Panel, &Piece)> {
    packet.windows.iter().flat_map(|window| {
        window.panels.iter().flat_map(move |panel| {
            let pieces = panel.pieces.iter();
            pieces.map(move |piece| (window, panel, piece))
        })
    })
}

impl SharedOutline<'_> {
    /// A name for a file of its own.
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

/// How far a cross reaches to either side of its place.
const CROSS: f64 = 5.0;

/// A cross at a place.
pub(crate) fn cross(place: PaperPoint) -> [[PaperPoint; 2]; 2] {
    [(CROSS, 0.0), (0.0, CROSS)]
        .map(|(x, y)| [at(place.x - x, place.y - y), at(place.x + x, place.y + y)])
}

/// The points of a line on a piece, in millimetres from the edges it is measured from.
pub(crate) fn points(line: &[OutlinePoint]) -> Vec<PaperPoint> {
    let place = |point: &OutlinePoint| at(point.at.across.mm, point.at.down.mm);
    line.iter().map(place).collect()
}
