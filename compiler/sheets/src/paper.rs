//! The paper that sheets are printed on.

use pelmet_packet::{SystemOfUnits, Units};

/// The sizes of paper that sheets and templates are printed on.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum Paper {
    /// US Letter, 8 1/2 by 11 inches (ANSI/ASME Y14.1, size A).
    Letter,
    /// A4, 210 by 297 millimetres (ISO 216).
    A4,
}

impl Paper {
    /// Both, in the order they are offered.
    pub const ALL: [Paper; 2] = [Paper::Letter, Paper::A4];

    /// The word for it on the command line.
    pub fn word(self) -> &'static str {
        match self {
            Paper::Letter => "letter",
            Paper::A4 => "a4",
        }
    }

    /// What it is called on a printed page.
    pub fn name(self) -> &'static str {
        match self {
            Paper::Letter => "US Letter",
            Paper::A4 => "A4",
        }
    }

    /// The paper that lies in the printer of a house that measures so: Letter where inches are
    /// written, else A4.
    pub fn usual(units: &Units) -> Paper {
        match units.system {
            SystemOfUnits::Inches => Paper::Letter,
            SystemOfUnits::Metric => Paper::A4,
        }
    }

    /// Its width and height upright, in millimetres.
    pub fn millimetres(self) -> (f64, f64) {
        match self {
            Paper::Letter => (215.9, 279.4),
            Paper::A4 => (210.0, 297.0),
        }
    }
}
