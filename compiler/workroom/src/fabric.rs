//! Cloth as it comes on the bolt.

use pelmet_measure::{Length, Ratio};

/// One cloth of the job.
#[derive(Clone, PartialEq, Debug)]
pub struct Fabric {
    /// The name the maker gave it.
    pub name: String,
    /// Width from edge to edge, selvages included.
    pub width: Length,
    /// Width of one selvage; the cloth has one on each side.
    pub selvage: Length,
    /// The print's period, where it has one.
    pub repeat: Option<Repeat>,
    /// Which ways up a piece may lie.
    pub way: Way,
    /// Whether a piece may be cut with the bolt's length running across the panel.
    pub railroad: bool,
    /// The gap the shears need between two pieces.
    pub shear_gap: Length,
    /// The longest continuous length to be had; `None` where the bolt has no end that matters.
    pub bolt_length: Option<Length>,
    /// The part of its length the cloth loses in the first press or wash (0.03 = 3 percent).
    pub shrinkage: Ratio,
    /// Mass of a square metre in grams.
    pub grams_per_square_metre: Option<Ratio>,
    /// Thickness of one layer, pressed.
    pub thickness: Option<Length>,
    /// What it costs.
    pub price: Option<Price>,
}

impl Fabric {
    /// The width pieces may use: the whole width less a selvage on each side, never negative.
    pub fn usable_width(&self) -> Length {
        (self.width - self.selvage * 2).max(Length::ZERO)
    }

    /// Whether the print repeats across the bolt, so that where a piece lies across it matters.
    pub fn repeats_across(&self) -> bool {
        self.repeat.is_some_and(|repeat| repeat.across.is_some())
    }
}

/// The period of a print along the bolt and across it.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub struct Repeat {
    /// Along the bolt; `None` for a print that only repeats across (a stripe).
    pub along: Option<Length>,
    /// Across the bolt; `None` where no piece needs to mind it.
    pub across: Option<Length>,
    /// How one width meets the next.
    pub matching: Match,
}

/// How the print of one width meets the next.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum Match {
    /// The same part of the print lies at the same height.
    Straight,
    /// The next width is half a repeat further along.
    HalfDrop,
}

/// Which ways up a piece may lie on the cloth.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum Way {
    /// The print or pile has a top: pieces lie as drawn.
    OneWay,
    /// Pieces may be turned end for end.
    Any,
}

/// A price for a length of cloth.
#[derive(Clone, PartialEq, Debug)]
pub struct Price {
    /// Money, in the job's currency.
    pub amount: Ratio,
    /// The length that money buys: a yard or a metre.
    pub per: Length,
}
