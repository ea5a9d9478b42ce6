//! The drawings of cut pieces.

use super::{ABOVE, LEFT, PieceDrawn, drawn};
use crate::drawing::{Drawing, Element, LineKind, PAGE_HEIGHT, PAGE_WIDTH, PaperPoint, SCALES, at};
use crate::examples::packets;
use pelmet_packet::{Panel, Piece};

/// Every piece of the examples, drawn alone as a shape, with its panel.
fn pieces() -> Vec<(Panel, Piece, Drawing)> {
    let windows = packets().into_iter().flat_map(|packet| packet.windows);
    let panels = windows.flat_map(|window| window.panels);
    let pieces = panels.flat_map(|panel| {
        let pieces = panel.pieces.clone().into_iter();
        pieces.map(move |piece| (panel.clone(), piece))
    });
    let pieces = pieces.map(|(panel, piece)| {
        let drawing = drawn(&panel, std::slice::from_ref(&piece), false).unwrap();
        (panel, piece, drawing)
    });
    pieces.collect()
}

fn told(drawing: &Drawing, text: &str) -> bool {
    let mut elements = drawing.elements.iter();
    elements.any(|it| matches!(it, Element::Words { text: told, .. } if told == text))
}

#[test]
fn every_outline_fits_a_page() {
    for (_, _, drawing) in pieces() {
        assert!(drawing.width <= PAGE_WIDTH, "{}", drawing.title);
        assert!(drawing.height <= PAGE_HEIGHT, "{}", drawing.title);
    }
}

#[test]
fn the_line_the_shears_follow_is_that_of_the_packet() {
    for (panel, piece, drawing) in pieces() {
        let line = drawing.elements.iter().find_map(|it| match it {
            Element::Path {
                line: LineKind::Cut,
                points,
                ..
            } => Some(points),
            _ => None,
        });
        let line = line.unwrap();
        assert_eq!(line.len(), piece.outline.len());
        let is_to_scale = |ratio: f64| {
            line.iter().zip(&piece.outline).all(|(point, it)| {
                let PaperPoint { x, y } = at(it.at.across.mm / ratio, it.at.down.mm / ratio);
                (point.x - LEFT - x).hypot(point.y - ABOVE - y) < 1e-6
            })
        };
        let scales = SCALES.into_iter().filter(|scale| is_to_scale(scale.ratio));
        let [scale] = scales.collect::<Vec<_>>()[..] else {
            panic!("no scale fits {} of {}", piece.label, panel.name);
        };
        let bar = format!("1 : {};", scale.ratio);
        let mut elements = drawing.elements.iter();
        assert!(
            elements.any(|it| matches!(it, Element::Words { text, .. } if text.starts_with(&bar)))
        );
    }
}

#[test]
fn every_corner_is_told_by_its_number_and_every_straight_sewn_edge_by_its_length() {
    for (panel, piece, drawing) in pieces() {
        for corner in piece.outline.iter().filter(|it| !it.on_curve) {
            let number = corner.number.unwrap().to_string();
            assert!(told(&drawing, &number), "{number} in {}", drawing.title);
        }
        let has_edge = |number: u32| piece.sewn.iter().any(|it| it.number == Some(number));
        let face = piece.label.ends_with("face");
        for corner in panel.outline.iter().filter(|_| face) {
            let long = corner.edge_length.mm > 100.0 && has_edge(corner.number);
            assert!(
                !long || told(&drawing, &corner.edge_length.text),
                "{}",
                drawing.title
            );
        }
    }
}

/// Outward is away from the middle of a shape that bulges nowhere inward.
#[test]
fn numbers_stand_outside_the_piece() {
    for (panel, piece, drawing) in pieces() {
        let outline = PieceDrawn {
            panel: &panel,
            alike: &[],
            piece: &piece,
            labels: "",
            scale: SCALES[3],
        };
        if piece.outline.len() != 4 {
            continue;
        }
        for (index, it) in piece.outline.iter().enumerate() {
            let (point, out) = (
                outline.point(it),
                super::numbers::outward(outline, &piece.outline, index),
            );
            let (x, y) = (
                (LEFT + outline.right()) / 2.0,
                (ABOVE + outline.foot()) / 2.0,
            );
            let away = (point.x - x) * out.x + (point.y - y) * out.y;
            assert!(away > 0.0, "corner {index} in {}", drawing.title);
        }
    }
}
