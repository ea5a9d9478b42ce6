//! How much work a search for a better layout may do.

use pelmet_measure::Length;

use crate::Piece;
use crate::watch::Watched;

/// A budget for the search, in steps: a step is one look at how two pieces lie to each other.
///
/// Steps are counted, not seconds, so that a layout is the same on every machine.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub struct Effort(u64);

/// What [`Effort::usual`] allows for each piece.
const USUAL_STEPS_PER_PIECE: u64 = 300_000;

/// What [`Effort::usual`] allows for any job.
const FEWEST_USUAL_STEPS: u64 = 3_000_000;

/// What [`Effort::usual`] allows at most.
const MOST_USUAL_STEPS: u64 = 300_000_000;

impl Effort {
    /// No search at all: the rule of thumb and shelves only.
    pub const NONE: Effort = Effort(0);

    /// The usual effort for so many pieces: more for more of them, up to a limit.
    #[must_use]
    pub fn usual(pieces: usize) -> Effort {
        let pieces = u64::try_from(pieces).unwrap_or(u64::MAX);
        Effort(
            pieces
                .saturating_mul(USUAL_STEPS_PER_PIECE)
                .saturating_add(FEWEST_USUAL_STEPS)
                .min(MOST_USUAL_STEPS),
        )
    }

    /// The usual effort for these pieces.
    #[must_use]
    pub fn usual_for(pieces: &[Piece]) -> Effort {
        let count = |piece: &Piece| usize::try_from(piece.quantity).unwrap_or(usize::MAX);
        Effort::usual(pieces.iter().map(count).fold(0, usize::saturating_add))
    }

    /// So many steps.
    #[must_use]
    pub const fn steps(steps: u64) -> Effort {
        Effort(steps)
    }

    /// How many steps it is.
    #[must_use]
    pub const fn count(self) -> u64 {
        self.0
    }

    /// The same, so many times over.
    #[must_use]
    pub const fn times(self, times: u64) -> Effort {
        Effort(self.0.saturating_mul(times))
    }
}

/// What is left of an effort.
pub(crate) struct Steps<'search> {
    left: u64,
    watched: &'search Watched<'search>,
}

impl<'search> Steps<'search> {
    /// The steps of an effort, for a search that is watched.
    pub(crate) fn of(effort: Effort, watched: &'search Watched<'search>) -> Steps<'search> {
        Steps {
            left: effort.0,
            watched,
        }
    }

    /// Uses so many steps.
    pub(crate) fn spend(&mut self, steps: usize) {
        let steps = u64::try_from(steps).unwrap_or(u64::MAX);
        self.left = self.left.saturating_sub(steps);
        self.watched.spend(steps);
    }

    /// Tells whoever watches of a layout that buys so much.
    pub(crate) fn found(&self, bought: Length) {
        self.watched.found(bought);
    }

    /// How many are left.
    pub(crate) fn count(&self) -> u64 {
        self.left
    }

    /// Whether none are left, or the search is broken off.
    pub(crate) fn are_spent(&self) -> bool {
        self.left == 0 || self.watched.is_stopped()
    }

    /// Takes a part of what is left away, to be spent on its own.
    pub(crate) fn part(&mut self, numerator: u64, denominator: u64) -> Steps<'search> {
        let part = self
            .left
            .saturating_mul(numerator)
            .checked_div(denominator)
            .unwrap_or(self.left)
            .min(self.left);
        self.left = self.left.saturating_sub(part);
        Steps {
            left: part,
            watched: self.watched,
        }
    }

    /// Gives back what a part did not spend.
    pub(crate) fn give_back(&mut self, part: &Steps) {
        self.left = self.left.saturating_add(part.left);
    }
}
