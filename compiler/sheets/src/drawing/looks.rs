//! How each kind of line looks, whatever it is written as: told apart without colour, on paper and on
//! a screen.

use super::line_kind::LineKind;

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

/// How a line of some meaning is drawn, whoever writes it.
pub(crate) fn look(line: LineKind) -> Look {
    match line {
        LineKind::Waste => filled(0xec, solid(HAIRLINE)),
        LineKind::Flaw => drawn(solid(0.3)),
        LineKind::Selvage => filled(0xc9, solid(HAIRLINE)),
        LineKind::Cut => filled(WHITE, solid(0.45)),
        LineKind::Piece => area(WHITE),
        LineKind::Print => drawn(solid(0.4)),
        LineKind::Face => filled(WHITE, solid(THIN)),
        LineKind::Lining => filled(0xbd, solid(THIN)),
        LineKind::Opening => filled(0xf2, dashed(0.35, &[1.6, 1.0])),
        LineKind::DrawnUp => drawn(solid(THIN)),
        LineKind::Support => drawn(solid(1.1)),
        LineKind::Fold => drawn(dashed(THIN, &[3.0, 1.0, 0.6, 1.0])),
        LineKind::Sewn => drawn(dashed(THIN, &[2.0, 1.0])),
        LineKind::Centre => drawn(dashed(0.2, &[7.0, 1.2])),
        LineKind::FoldAway => drawn(dashed(THIN, &[1.0, 0.8])),
        LineKind::Hidden => filled(0xde, solid(HAIRLINE)),
        LineKind::Turned => area(0xbd),
        LineKind::Edge => drawn(solid(0.5)),
        LineKind::Move => drawn(solid(0.3)),
        LineKind::Repeat => drawn(Stroke {
            grey: 0x55,
            ..dashed(0.2, &[0.1, 1.1])
        }),
        LineKind::Measure => drawn(solid(THIN)),
        LineKind::Top => drawn(solid(0.35)),
        LineKind::Rule => drawn(Stroke {
            grey: 0x90,
            ..solid(0.15)
        }),
        LineKind::Underline => drawn(solid(0.4)),
        LineKind::Box => drawn(solid(0.3)),
        LineKind::CutEdge => drawn(solid(0.45)),
        LineKind::Frame => drawn(Stroke {
            grey: 0x77,
            ..solid(0.15)
        }),
        LineKind::Join => drawn(Stroke {
            grey: 0x77,
            ..dashed(0.2, &[0.1, 1.4])
        }),
        LineKind::Apart => drawn(dashed(0.2, &[2.0, 1.4])),
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
