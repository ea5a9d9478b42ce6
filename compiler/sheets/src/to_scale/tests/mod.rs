//! What holds of every drawing of the examples.

mod looks;

use std::slice::from_ref;

use pelmet_packet::Packet;

use super::piece::drawn as piece_drawn;
use super::{elevation, folding, layout};
use crate::drawing::{Align, Drawing, Element, LineKind, PaperPoint, TextSize};
use crate::examples::packets;

/// Every drawing of the examples.
pub(crate) fn drawings() -> Vec<Drawing> {
    let drawn = |packet: Packet| {
        let windows: Vec<Drawing> = packet.windows.iter().map(elevation).collect();
        let cloths: Vec<Drawing> = packet.cloths.iter().flat_map(layout).collect();
        let panels = || packet.windows.iter().flat_map(|window| &window.panels);
        let foldings: Vec<Drawing> = panels().flat_map(folding).collect();
        let pieces = panels().flat_map(|panel| panel.pieces.iter().map(move |it| (panel, it)));
        let outlines = pieces.filter_map(|(panel, it)| piece_drawn(panel, from_ref(it), false));
        [windows, cloths, foldings, outlines.collect()].concat()
    };
    packets().into_iter().flat_map(drawn).collect()
}

pub(crate) fn points(drawing: &Drawing) -> Vec<PaperPoint> {
    let points = drawing.elements.iter().flat_map(|element| match element {
        Element::Path { points, .. } => points.clone(),
        Element::Words { at, .. } | Element::Text { at, .. } => vec![*at],
    });
    points.collect()
}

#[test]
fn everything_lies_on_the_paper() {
    for drawing in drawings() {
        for PaperPoint { x, y } in points(&drawing) {
            assert!(
                (0.0..=drawing.width).contains(&x),
                "{x} in {}",
                drawing.title
            );
            assert!(
                (0.0..=drawing.height).contains(&y),
                "{y} in {}",
                drawing.title
            );
        }
    }
}

/// Measures and the arrow in a piece are told by the words beside them, and what is turned over only
/// where it is seen.
#[test]
fn every_line_that_has_a_meaning_is_explained() {
    let plain = [LineKind::Measure, LineKind::Top, LineKind::Lining];
    for drawing in drawings() {
        let drawn = |line: &LineKind| drawing.has(*line);
        let lines = LineKind::ALL
            .iter()
            .copied()
            .filter(|line| !plain.contains(line));
        for line in lines.filter(drawn) {
            assert!(
                is_explained(line, &drawing),
                "{line:?} in {}",
                drawing.title
            );
        }
    }
}

/// Whether words stand beside a sample of a line.
fn is_explained(line: LineKind, drawing: &Drawing) -> bool {
    let samples = drawing.elements.iter().filter_map(|element| match element {
        Element::Path {
            line: of, points, ..
        } if *of == line => points.first(),
        _ => None,
    });
    let mut samples = samples;
    samples.any(|sample| {
        drawing.elements.iter().any(|element| match element {
            Element::Words {
                at,
                align: Align::Left,
                size: TextSize::Small,
                ..
            } => (3.0..13.1).contains(&(at.x - sample.x)) && (at.y - sample.y).abs() < 2.5,
            _ => false,
        })
    })
}
