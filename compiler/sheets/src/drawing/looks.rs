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

/// The look of a line.
pub(crate) fn look(line: Line) -> Look {
    match line {
        Line::Waste => area(0xec),
        Line::Selvage => area(0xc9),
        Line::Cut => filled(WHITE, solid(0.45)),
        Line::Face => filled(WHITE, solid(THIN)),
        Line::Lining => filled(0xbd, solid(THIN)),
        Line::Opening => filled(0xf2, dashed(0.35, &[1.6, 1.0])),
        Line::DrawnUp => drawn(solid(THIN)),
        Line::Support => drawn(solid(1.1)),
        Line::Fold => drawn(dashed(THIN, &[3.0, 1.0, 0.6, 1.0])),
        Line::Sewn => drawn(dashed(THIN, &[2.0, 1.0])),
        Line::Centre => drawn(dashed(0.2, &[7.0, 1.2])),
        Line::FoldAway => drawn(dashed(THIN, &[1.0, 0.8])),
        Line::Hidden => area(0xde),
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
            grey: 0x99,
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
    use crate::drawing::tests::drawings;
    use crate::drawing::{Element, Line, look};

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
}
