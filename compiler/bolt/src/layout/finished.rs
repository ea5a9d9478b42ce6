//! The finished layout.

use pelmet_measure::Length;

use super::bands::{LayoutBand, bands};
use super::bought::{BoltLengths, bought_at_least};
use super::placed::Placed;
use super::sections::BoltSection;
use crate::given::{LayoutCloth, LayoutPiece};

/// Every piece in its place, and the cloth that takes.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Layout {
    /// The pieces in cutting order: bolt by bolt, along each bolt, then across it.
    pub placed: Vec<Placed>,
    /// What is taken of each bolt; one entry where the bolt has no end, none where nothing is cut. A
    /// bolt whose flaws leave no room for any piece is passed over and nothing of it used.
    pub bolts: Vec<BoltLengths>,
    /// Which stretches of the bolts are folded on the table and which lie open, in order; none where
    /// no piece is cut on the fold.
    pub sections: Vec<BoltSection>,
    /// The length used of all bolts together, each to the end of its last piece.
    pub exact: Length,
    /// The length bought of all bolts together, each rounded up to the buying step.
    pub bought: Length,
    /// The length the workroom rule of thumb takes: each kind of piece on its own, as many side
    /// by side as the width holds, every cut rounded up to the repeat. Never less than `exact`.
    pub rule_of_thumb: Length,
    /// A length that no layout can be shorter than: never more than `exact`.
    pub lower_bound: Length,
    /// Whether the search for a shorter layout was broken off by whoever watched it.
    pub stopped_early: bool,
}

impl Layout {
    /// Whether no layout on this cloth can buy less.
    #[must_use]
    pub fn cannot_be_beaten(&self, cloth: &LayoutCloth) -> bool {
        self.bought <= bought_at_least(cloth, self.lower_bound)
    }

    /// The bands that cuts straight across the cloth part it into, in cutting order; `pieces` are those
    /// that were laid.
    #[must_use]
    pub fn bands(&self, pieces: &[LayoutPiece]) -> Vec<LayoutBand> {
        bands(pieces, &self.placed)
    }
}
