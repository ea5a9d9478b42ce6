//! Cloth as it comes on the bolt.

use crate::closed_set::closed_set;
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
    /// Where across the bolt the print is held: from its left edge, selvage included, to the middle
    /// of a motif or wherever else a repeat is taken to begin. `None` for the inner edge of the left
    /// selvage.
    pub print_begins: Option<Length>,
    /// Which ways up a piece may lie.
    pub way: Way,
    /// Whether a piece is cut with the bolt's length running across the panel.
    pub railroad: Railroad,
    /// The gap the shears need between two pieces.
    pub shear_gap: Length,
    /// The longest continuous length to be had; `None` where the bolt has no end that matters.
    pub bolt_length: Option<Length>,
    /// What must be cut around.
    pub flaws: Vec<FlawOrder>,
    /// The part of its length the cloth loses in the first press or wash (0.03 = 3 percent).
    pub shrinkage: Ratio,
    /// Mass of a square metre in grams.
    pub grams_per_square_metre: Option<Ratio>,
    /// Thickness of one layer, pressed.
    pub thickness: Option<Length>,
    /// What it costs.
    pub price: Option<PriceOrder>,
}

impl Fabric {
    /// The width pieces may use: the whole width less a selvage on each side, never negative.
    pub fn usable_width(&self) -> Length {
        (self.width - self.selvage * 2).max(Length::ZERO)
    }

    /// A line of the print across the bolt, from the left end of the usable width. It may lie in the
    /// selvage, to the left.
    pub fn print_line_across(&self) -> Length {
        self.print_begins
            .map_or(Length::ZERO, |begins| begins - self.selvage)
    }

    /// Whether the print repeats across the bolt, so that where a piece lies across it matters.
    pub fn repeats_across(&self) -> bool {
        self.repeat.is_some_and(|repeat| repeat.across.is_some())
    }
}

/// The most flaws one cloth may have, all bolts together.
pub const MAXIMUM_FLAWS: usize = 200;

/// A part of a bolt that nothing may be cut from.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub struct FlawOrder {
    /// Which bolt has it, from 1.
    pub bolt: u32,
    /// Where it begins, from the cut end.
    pub from: Length,
    /// Where it ends, from the cut end.
    pub to: Length,
    /// Its left and right edge, from the left edge of the cloth, selvage included; `None` where it
    /// reaches across the whole cloth.
    pub across: Option<(Length, Length)>,
}

impl FlawOrder {
    /// Whether two flaws have cloth in common.
    pub fn overlaps(&self, other: &Self) -> bool {
        let beside = match (self.across, other.across) {
            (Some((left, right)), Some((its_left, its_right))) => {
                right <= its_left || its_right <= left
            }
            _ => false,
        };
        self.bolt == other.bolt && self.from < other.to && other.from < self.to && !beside
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

closed_set! {
    /// How the print of one width meets the next.
    pub enum Match {
        /// The same part of the print lies at the same height.
        Straight = "straight",
        /// The next width is half a repeat further along.
        HalfDrop = "half-drop",
    }
}

closed_set! {
    /// When a piece lies along the cloth instead of up it, its width running with the bolt's length. One
    /// that is longer than the cloth is wide never does.
    pub enum Railroad {
        /// Every piece stands with the length of the cloth, whatever it costs.
        Never = "no",
        /// Where it is too wide for the cloth and would have to be joined.
        WhereTooWide = "yes",
        /// In whichever of the other ways the job buys least; until that is known, where it is too wide.
        WhereItSaves = "where it saves",
        /// Wherever it fits.
        Always = "always",
    }
}

closed_set! {
    /// Which ways up a piece may lie on the cloth.
    pub enum Way {
        /// The print or pile has a top: pieces lie as drawn.
        OneWay = "one-way",
        /// Pieces may be turned end for end.
        Any = "any",
    }
}

/// A price for a length of cloth.
#[derive(Clone, PartialEq, Debug)]
pub struct PriceOrder {
    /// Money, in the job's currency.
    pub amount: Ratio,
    /// The length that money buys: a yard or a metre.
    pub per: Length,
}
