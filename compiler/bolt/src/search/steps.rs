//! The steps a search has left to spend.

use pelmet_measure::Length;

use super::effort::SearchEffort;
use super::watch::Watched;

/// What is left of an effort.
pub(crate) struct Steps<'search> {
    left: u64,
    watched: &'search Watched<'search>,
}

impl<'search> Steps<'search> {
    /// The steps of an effort, for a search that is watched.
    pub(crate) fn of(effort: SearchEffort, watched: &'search Watched<'search>) -> Steps<'search> {
        Steps {
            left: effort.count(),
            watched,
        }
    }

    /// Uses so many steps, and lets whoever watches know.
    pub(super) fn spend(&mut self, steps: usize) {
        let steps = u64::try_from(steps).unwrap_or(u64::MAX);
        self.left = self.left.saturating_sub(steps);
        self.watched.spend(steps);
    }

    /// Tells whoever watches of a layout that buys so much.
    pub(super) fn found(&self, bought: Length) {
        self.watched.found(bought);
    }

    /// What may still be spent.
    pub(super) fn count(&self) -> u64 {
        self.left
    }

    /// Whether none are left, or the search is broken off.
    pub(super) fn are_spent(&self) -> bool {
        self.left == 0 || self.watched.is_stopped()
    }

    /// Takes a part of what is left away, to be spent on its own: so one way of searching cannot use up
    /// what others were to have.
    pub(super) fn part(&mut self, numerator: u64, denominator: u64) -> Steps<'search> {
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
    pub(super) fn give_back(&mut self, part: &Steps) {
        self.left = self.left.saturating_add(part.left);
    }
}
