//! Labels: one for each piece that is cut, so that nobody takes one for another or hangs it upside
//! down.

use pelmet_packet::{LayerKind, Packet, Panel, PlacedPiece};

use crate::content::{PieceLabel, SheetBlocks};

pub(crate) fn print(packet: &Packet, sheet: &mut SheetBlocks) {
    sheet.paragraph(
        "One for each piece, cloth by cloth in cutting order; the number is that of the piece on its \
        cloth. Cut them apart along the dashed lines. Pin each to its piece as it comes off the cloth, \
        within the allowance, the arrow toward the top of the piece.",
    );
    sheet.labels(labels(packet));
}

fn labels(packet: &Packet) -> Vec<PieceLabel> {
    let pieces = packet.cloths.iter().flat_map(|cloth| {
        let placed = cloth.placed.iter();
        placed.map(|piece| label(packet, &cloth.name, piece))
    });
    pieces.collect()
}

fn label(packet: &Packet, cloth: &str, piece: &PlacedPiece) -> PieceLabel {
    // Along the cloth, a piece lies on its side.
    let (width, length) = if piece.railroaded {
        (&piece.length, &piece.width)
    } else {
        (&piece.width, &piece.length)
    };
    PieceLabel {
        job: packet.title.clone(),
        number: piece.number,
        cloth: cloth.to_owned(),
        panel: format!("{} {}", piece.window, piece.panel),
        layer: layer_and_strip(packet, piece),
        size: format!("{} x {}", width.text, length.text),
        remarks: remarks(piece),
    }
}

/// The layer in words and, of a joined piece, the strip.
fn layer_and_strip(packet: &Packet, piece: &PlacedPiece) -> String {
    let strip = piece.strip.map(|strip| format!(", strip {strip}"));
    let strip = strip.unwrap_or_default();
    let layer = match piece.layer {
        LayerKind::Face | LayerKind::Interlining | LayerKind::Lining => piece.layer.to_string(),
        LayerKind::Band => panel_of(packet, piece)
            .and_then(|panel| band_of(panel, piece, &strip))
            .unwrap_or_else(|| piece.layer.to_string()),
    };
    format!("{layer}{strip}")
}

fn panel_of<'a>(packet: &'a Packet, piece: &PlacedPiece) -> Option<&'a Panel> {
    let mut windows = packet.windows.iter();
    let window = windows.find(|window| window.name == piece.window)?;
    let mut panels = window.panels.iter();
    panels.find(|panel| panel.name == piece.panel)
}

/// Which band of its panel a piece is. A piece on a cloth does not say at which edge its band lies; but
/// each band of a panel makes a name of its own, and the piece bears one of them.
fn band_of(panel: &Panel, piece: &PlacedPiece, strip: &str) -> Option<String> {
    let of_panel = panel.bands.iter();
    let mut of_panel = of_panel.map(|band| format!("{} {}", piece.layer, band.edge));
    let PlacedPiece { window, name, .. } = piece;
    let is_named = |band: &String| *name == format!("{window} {} {band}{strip}", panel.name);
    of_panel.find(is_named)
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
    use crate::examples::packets;

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
