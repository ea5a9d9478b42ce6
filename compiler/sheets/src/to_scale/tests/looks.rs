//! How lines look in the drawings of the examples: told apart, and seen, without colour.

use super::drawings;
use crate::drawing::{Drawing, Element, LineKind, look};

const BLACK: u8 = 0;
const WHITE: u8 = 255;

#[test]
fn every_line_that_is_drawn_is_among_all_and_can_be_seen() {
    for element in drawings().iter().flat_map(|drawing| &drawing.elements) {
        if let Element::Path { line, .. } = element {
            assert!(LineKind::ALL.contains(line), "{line:?}");
            let look = look(*line);
            assert!(look.fill.is_some() || look.stroke.is_some(), "{line:?}");
        }
    }
}

/// The contrast of two greys, by the Web Content Accessibility Guidelines 2.2 ("contrast ratio" and
/// "relative luminance").
fn contrast(one: u8, other: u8) -> f64 {
    let luminance = |grey: u8| {
        let part = f64::from(grey) / 255.0;
        if part <= 0.04045 {
            part / 12.92
        } else {
            ((part + 0.055) / 1.055).powf(2.4)
        }
    };
    let (one, other) = (luminance(one) + 0.05, luminance(other) + 0.05);
    one.max(other) / one.min(other)
}

#[test]
fn contrast_is_that_of_the_guidelines() {
    assert!((contrast(BLACK, WHITE) - 21.0).abs() < 1e-9);
    assert!((contrast(0x77, 0x77) - 1.0).abs() < 1e-9);
    // The darkest grey that is too light for text on white, as is well known: 4.48.
    assert!((contrast(0x77, WHITE) - 4.478).abs() < 0.001);
}

/// What may lie behind something: the paper, which is white on a light page and on a dark one, and
/// every area of the drawing.
fn grounds(drawing: &Drawing) -> Vec<u8> {
    let drawn = |line: &LineKind| drawing.has(*line);
    let fills = LineKind::ALL
        .iter()
        .copied()
        .filter(drawn)
        .filter_map(|line| look(line).fill);
    std::iter::once(WHITE).chain(fills).collect()
}

/// Success criteria 1.4.3 and 1.4.11 of the guidelines. Words are black.
#[test]
fn words_and_lines_stand_out_from_whatever_lies_behind_them() {
    for drawing in drawings() {
        for ground in grounds(&drawing) {
            assert!(contrast(BLACK, ground) >= 4.5, "words in {}", drawing.title);
            for line in LineKind::ALL
                .iter()
                .copied()
                .filter(|line| drawing.has(*line))
            {
                let Some(stroke) = look(line).stroke else {
                    continue;
                };
                let stands_out = contrast(stroke.grey, ground) >= 3.0;
                assert!(stands_out, "{line:?} on {ground:02x} in {}", drawing.title);
            }
        }
    }
}

/// On pages, too, every line stands out from the paper.
#[test]
fn every_line_stands_out_from_the_paper() {
    for line in LineKind::ALL.iter().copied() {
        if let Some(stroke) = look(line).stroke {
            assert!(contrast(stroke.grey, WHITE) >= 3.0, "{line:?}");
        }
    }
}

/// An area is told from the paper by the line around it, not by its grey alone. What is turned over
/// lies between two creases, which are lines; the sides of a piece that is seen in part are drawn by
/// themselves.
#[test]
fn every_area_is_bounded_by_a_line() {
    for line in LineKind::ALL
        .iter()
        .copied()
        .filter(|line| ![LineKind::Turned, LineKind::Piece].contains(line))
    {
        let look = look(line);
        assert!(look.fill.is_none() || look.stroke.is_some(), "{line:?}");
    }
}

/// Two lines that mean different things in one drawing look different without colour.
#[test]
fn no_two_lines_of_a_drawing_look_alike() {
    // Plain measures and arrows are told by their ends and by the words beside them.
    let plain = [
        LineKind::Measure,
        LineKind::Top,
        LineKind::DrawnUp,
        LineKind::Move,
    ];
    for drawing in drawings() {
        let drawn = |line: &LineKind| drawing.has(*line);
        let lines = LineKind::ALL
            .iter()
            .copied()
            .filter(|line| !plain.contains(line));
        let lines: Vec<LineKind> = lines.filter(drawn).collect();
        for (index, one) in lines.iter().enumerate() {
            for other in lines.iter().skip(index + 1) {
                assert_ne!(
                    look(*one),
                    look(*other),
                    "{one:?}, {other:?}: {}",
                    drawing.title
                );
            }
        }
    }
}
