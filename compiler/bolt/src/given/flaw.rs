//! Flaws to cut around.

use pelmet_measure::Length;

/// A part of a bolt that no piece may lie on. A piece may lie right against it, for nobody cuts
/// there but to cut the flaw away.
#[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub struct BoltFlaw {
    /// Which bolt has it, from 0.
    pub bolt: u32,
    /// Where it begins, from the start of the bolt.
    pub from: Length,
    /// Where it ends, from the start of the bolt.
    pub to: Length,
    /// Its left edge, from the left end of the usable width.
    pub left: Length,
    /// Its right edge, from the left end of the usable width.
    pub right: Length,
}

impl BoltFlaw {
    /// Whether it lies partly between two places along its bolt.
    pub(crate) fn lies_between(&self, from: Length, to: Length) -> bool {
        self.from < to && from < self.to
    }
}
