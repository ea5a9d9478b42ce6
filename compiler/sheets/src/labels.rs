//! Labels: one for each piece that is cut, so that nobody takes one for another or hangs it upside
//! down.

use pelmet_packet::{Cloth, Packet, PlacedPiece};

use crate::page::Page;

/// What is written on a label.
#[derive(Clone, PartialEq, Eq, Debug)]
pub(crate) struct Label {
    pub(crate) job: String,
    /// The number of the piece on its cloth.
    pub(crate) number: u32,
    pub(crate) cloth: String,
    /// Window and panel.
    pub(crate) panel: String,
    /// The layer and, of a joined piece, the strip.
    pub(crate) layer: String,
    /// Its width and length, the length toward its top.
    pub(crate) size: String,
    /// Which of how many alike, and how it lies on the cloth where that is not its top first.
    pub(crate) remarks: String,
}

pub(crate) fn print(packet: &Packet, page: &mut Page) {
    page.paragraph(
        "One for each piece, cloth by cloth in cutting order; the number is that of the piece on its \
        cloth. Cut them apart along the dashed lines. Pin each to its piece as it comes off the cloth, \
        within the allowance, the arrow toward the top of the piece.",
    );
    page.labels(labels(packet));
}

fn labels(packet: &Packet) -> Vec<Label> {
    let of_cloth = |cloth: &Cloth| {
        let placed = cloth.placed.iter();
        let labels = placed.map(|piece| label(&packet.title, &cloth.name, piece));
        labels.collect::<Vec<Label>>()
    };
    packet.cloths.iter().flat_map(of_cloth).collect()
}

fn label(job: &str, cloth: &str, piece: &PlacedPiece) -> Label {
    // Along the cloth, a piece lies on its side.
    let (width, length) = if piece.railroaded {
        (&piece.length, &piece.width)
    } else {
        (&piece.width, &piece.length)
    };
    let panel = format!("{} {}", piece.window, piece.panel);
    let layer = piece.name.strip_prefix(&panel).unwrap_or(&piece.name);
    Label {
        job: job.to_owned(),
        number: piece.number,
        cloth: cloth.to_owned(),
        layer: layer.trim_start().to_owned(),
        panel,
        size: format!("{} x {}", width.text, length.text),
        remarks: remarks(piece),
    }
}

fn remarks(piece: &PlacedPiece) -> String {
    let remarks = [
        Some(format!("{} of {}", piece.copy, piece.copies)),
        piece
            .railroaded
            .then(|| String::from("lies along the cloth")),
        piece.turned.then(|| String::from("lies upside down")),
        piece.fold_at.is_some().then(|| String::from("on the fold")),
    ];
    remarks
        .into_iter()
        .flatten()
        .collect::<Vec<String>>()
        .join(", ")
}

#[cfg(test)]
mod tests {
    use super::labels;
    use crate::drawing::tests::packets;

    #[test]
    fn every_piece_on_a_cloth_has_a_label_that_says_what_it_is() {
        for packet in packets() {
            let labels = labels(&packet);
            let placed: Vec<_> = packet
                .cloths
                .iter()
                .flat_map(|cloth| &cloth.placed)
                .collect();
            assert_eq!(labels.len(), placed.len());
            for (label, piece) in labels.iter().zip(placed) {
                assert_eq!(format!("{} {}", label.panel, label.layer), piece.name);
                assert_eq!(label.remarks.contains("upside down"), piece.turned);
            }
        }
    }

    #[test]
    fn a_piece_on_its_side_is_told_as_it_hangs() {
        let [mut packet, ..] = packets();
        let told = labels(&packet)[0].size.clone();
        packet.cloths[0].placed[0].railroaded = true;
        let (width, length) = told.split_once(" x ").unwrap();
        let turned = &labels(&packet)[0];
        assert_eq!(turned.size, format!("{length} x {width}"));
        assert!(turned.remarks.contains("along the cloth"));
    }
}
