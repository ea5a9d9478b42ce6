//! The folding charts of the examples.

use pelmet_packet::Panel;

use super::folding;
use crate::drawing::{
    Align, Drawing, Element, LineKind, PAGE_HEIGHT, PAGE_WIDTH, TextSize, width_of,
};
use crate::examples::packets;

/// Every pleated panel of the examples, with its drawings.
fn panels() -> Vec<(Panel, Vec<Drawing>)> {
    let windows = packets().into_iter().flat_map(|packet| packet.windows);
    let panels = windows.flat_map(|window| window.panels);
    let drawn = panels.map(|panel| (panel.clone(), folding(&panel)));
    let drawn: Vec<_> = drawn.filter(|(_, drawings)| !drawings.is_empty()).collect();
    assert!(drawn.len() > 3);
    drawn
}

fn count(drawings: &[Drawing], of: impl Fn(&Element) -> bool) -> usize {
    let elements = drawings.iter().flat_map(|drawing| &drawing.elements);
    elements.filter(|element| of(element)).count()
}

#[test]
fn every_drawing_fits_a_page() {
    for (_, drawings) in panels() {
        for drawing in drawings {
            assert!(drawing.width <= PAGE_WIDTH, "{}", drawing.title);
            assert!(drawing.height <= PAGE_HEIGHT, "{}", drawing.title);
        }
    }
}

/// One more of each kind on every page explains the line.
#[test]
fn every_crease_is_drawn_once() {
    for (panel, drawings) in panels() {
        let creases = count(&drawings, |it| {
            it.is_of(LineKind::Fold) || it.is_of(LineKind::FoldAway)
        });
        assert_eq!(
            creases,
            panel.creases.len() + 2 * drawings.len(),
            "{}",
            panel.name
        );
    }
}

#[test]
fn every_fold_has_an_arrow_with_the_number_of_its_pleat() {
    for (panel, drawings) in panels() {
        let folds = panel.marks.iter().filter_map(|mark| mark.fold.as_ref());
        let arrows = count(
            &drawings,
            |it| matches!(it, Element::Path { line: LineKind::Move, points, .. } if points.len() == 4),
        );
        assert_eq!(arrows, folds.clone().count(), "{}", panel.name);
        for fold in folds {
            let number = fold.pleat.to_string();
            let told = |it: &Element| matches!(it, Element::Words { text, .. } if *text == number);
            assert!(count(&drawings, told) > 0, "{number} of {}", panel.name);
        }
    }
}

/// The folded cloth of a panel in one row is as wide as the packet says it lies.
#[test]
fn the_folded_cloth_is_as_wide_as_it_lies() {
    for (panel, drawings) in panels() {
        let [drawing] = drawings.as_slice() else {
            continue;
        };
        let Some(folded) = &panel.folded else {
            continue;
        };
        let edges = drawing.elements.iter().filter_map(|it| match it {
            Element::Path {
                line: LineKind::Edge,
                points,
                ..
            } => Some(points),
            _ => None,
        });
        // One in the row, one to explain the line.
        let edges: Vec<_> = edges.collect();
        let [chart, _] = edges.as_slice() else {
            continue;
        };
        let across = chart.iter().map(|point| point.x);
        let (least, most) = across.fold((f64::MAX, f64::MIN), |(least, most), x| {
            (least.min(x), most.max(x))
        });
        let ratio = super::row::scale(&panel, PAGE_WIDTH - 2.0 * super::SIDE).ratio;
        let wide = (folded.extent.to.mm - folded.extent.from.mm) / ratio;
        assert!(
            (most - least - wide).abs() < 1e-6,
            "{}: {}",
            panel.name,
            most - least
        );
    }
}

/// What is written on one line from the left, as the places of creases are.
#[test]
fn the_places_of_creases_do_not_lie_on_one_another() {
    for (_, drawings) in panels() {
        for drawing in drawings {
            let words = drawing.elements.iter().filter_map(|it| match it {
                Element::Words {
                    at,
                    align,
                    size: TextSize::Small,
                    text,
                } => match align {
                    Align::Left => Some((at.x, at.x + width_of(text, TextSize::Small), at.y)),
                    Align::Right => Some((at.x - width_of(text, TextSize::Small), at.x, at.y)),
                    Align::Middle => None,
                },
                _ => None,
            });
            let words: Vec<(f64, f64, f64)> = words.collect();
            for (index, one) in words.iter().enumerate() {
                for other in words.iter().skip(index + 1) {
                    let apart = one.1 <= other.0 || other.1 <= one.0;
                    assert!(apart || (one.2 - other.2).abs() > 2.0, "{}", drawing.title);
                }
            }
        }
    }
}
