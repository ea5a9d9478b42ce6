//! How each kind of line looks, whatever it is written as: told apart without colour, on paper and on
//! a screen.

use super::Line;

/// How a line and the area it encloses look. Greys run from 0, black, to 255, white.
#[derive(Copy, Clone, PartialEq, Debug)]
pub(crate) struct Look {
    /// The grey of the area, if it is filled.
    pub(crate) fill: Option<u8>,
    pub(crate) stroke: Option<Stroke>,
}

/// How a line is drawn: its ends and corners are round.
#[derive(Copy, Clone, PartialEq, Debug)]
pub(crate) struct Stroke {
    pub(crate) grey: u8,
    /// In millimetres.
    pub(crate) width: f64,
    /// How long it is drawn and not drawn by turns, in millimetres; empty for a line without gaps.
    pub(crate) dashes: &'static [f64],
}

/// Around the letters of a drawing so much is kept free of lines, in millimetres.
pub(crate) const CLEAR_OF_WORDS: f64 = 0.4;

const BLACK: u8 = 0;
const WHITE: u8 = 255;
const THIN: f64 = 0.25;
const HAIRLINE: f64 = 0.13;

/// The look of a line.
pub(crate) fn look(line: Line) -> Look {
    match line {
        Line::Waste => filled(0xec, solid(HAIRLINE)),
        Line::Flaw => drawn(solid(0.3)),
        Line::Selvage => filled(0xc9, solid(HAIRLINE)),
        Line::Cut => filled(WHITE, solid(0.45)),
        Line::Piece => area(WHITE),
        Line::Print => drawn(solid(0.4)),
        Line::Face => filled(WHITE, solid(THIN)),
        Line::Lining => filled(0xbd, solid(THIN)),
        Line::Opening => filled(0xf2, dashed(0.35, &[1.6, 1.0])),
        Line::DrawnUp => drawn(solid(THIN)),
        Line::Support => drawn(solid(1.1)),
        Line::Fold => drawn(dashed(THIN, &[3.0, 1.0, 0.6, 1.0])),
        Line::Sewn => drawn(dashed(THIN, &[2.0, 1.0])),
        Line::Centre => drawn(dashed(0.2, &[7.0, 1.2])),
        Line::FoldAway => drawn(dashed(THIN, &[1.0, 0.8])),
        Line::Hidden => filled(0xde, solid(HAIRLINE)),
        Line::Turned => area(0xbd),
        Line::Edge => drawn(solid(0.5)),
        Line::Move => drawn(solid(0.3)),
        Line::Repeat => drawn(Stroke {
            grey: 0x55,
            ..dashed(0.2, &[0.1, 1.1])
        }),
        Line::Measure => drawn(solid(THIN)),
        Line::Top => drawn(solid(0.35)),
        Line::Rule => drawn(Stroke {
            grey: 0x90,
            ..solid(0.15)
        }),
        Line::Underline => drawn(solid(0.4)),
        Line::Box => drawn(solid(0.3)),
        Line::CutEdge => drawn(solid(0.45)),
        Line::Frame => drawn(Stroke {
            grey: 0x77,
            ..solid(0.15)
        }),
        Line::Join => drawn(Stroke {
            grey: 0x77,
            ..dashed(0.2, &[0.1, 1.4])
        }),
        Line::Apart => drawn(dashed(0.2, &[2.0, 1.4])),
    }
}

fn area(grey: u8) -> Look {
    Look {
        fill: Some(grey),
        stroke: None,
    }
}

fn filled(grey: u8, stroke: Stroke) -> Look {
    Look {
        fill: Some(grey),
        stroke: Some(stroke),
    }
}

fn drawn(stroke: Stroke) -> Look {
    Look {
        fill: None,
        stroke: Some(stroke),
    }
}

fn solid(width: f64) -> Stroke {
    dashed(width, &[])
}

fn dashed(width: f64, dashes: &'static [f64]) -> Stroke {
    Stroke {
        grey: BLACK,
        width,
        dashes,
    }
}

#[cfg(test)]
mod tests {
    use super::{BLACK, WHITE};
    use crate::drawing::tests::drawings;
    use crate::drawing::{Drawing, Element, Line, look};

    #[test]
    fn every_line_that_is_drawn_is_among_all_and_can_be_seen() {
        for element in drawings().iter().flat_map(|drawing| &drawing.elements) {
            if let Element::Path { line, .. } = element {
                assert!(Line::ALL.contains(line), "{line:?}");
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
        let drawn = |line: &Line| drawing.elements.iter().any(|element| element.is_of(*line));
        let fills = Line::ALL
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
                for line in Line::ALL
                    .iter()
                    .copied()
                    .filter(|line| drawing.elements.iter().any(|it| it.is_of(*line)))
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
        for line in Line::ALL.iter().copied() {
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
        for line in Line::ALL
            .iter()
            .copied()
            .filter(|line| ![Line::Turned, Line::Piece].contains(line))
        {
            let look = look(line);
            assert!(look.fill.is_none() || look.stroke.is_some(), "{line:?}");
        }
    }

    /// Two lines that mean different things in one drawing look different without colour.
    #[test]
    fn no_two_lines_of_a_drawing_look_alike() {
        // Plain measures and arrows are told by their ends and by the words beside them.
        let plain = [Line::Measure, Line::Top, Line::DrawnUp, Line::Move];
        for drawing in drawings() {
            let drawn = |line: &Line| drawing.elements.iter().any(|it| it.is_of(*line));
            let lines = Line::ALL
                .iter()
                .copied()
                .filter(|line| !plain.contains(line));
            let lines: Vec<Line> = lines.filter(drawn).collect();
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
}
