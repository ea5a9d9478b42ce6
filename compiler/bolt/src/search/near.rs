//! Finding the pieces near a place along a bolt without looking at all that lie on it.

use pelmet_measure::Length;

/// Pieces by where they start along a bolt; each is known by a number.
///
/// Sorted by their start alone they can be looked up by halving, and a list is quick to shift as long as
/// no cloth carries more than a few thousand. Where they end is not sorted: a piece that reaches a place
/// starts at most the longest length before it, which cuts off all but a few.
pub(super) struct Near {
    starts: Vec<(Length, usize)>,
    /// No piece is longer.
    longest: Length,
}

impl Near {
    /// No pieces, and none to come that is longer than this.
    pub(super) fn none(longest: Length) -> Near {
        Near {
            starts: Vec::new(),
            longest,
        }
    }

    /// Adds a piece that starts here.
    pub(super) fn add(&mut self, start: Length, number: usize) {
        let at = self.place(start, number);
        self.starts.insert(at, (start, number));
    }

    /// Takes away a piece that starts here.
    pub(super) fn remove(&mut self, start: Length, number: usize) {
        let at = self.place(start, number);
        if self.starts.get(at) == Some(&(start, number)) {
            self.starts.remove(at);
        }
    }

    /// All pieces that lie partly between two places along the bolt, and perhaps some that end before
    /// the first; by their start.
    pub(super) fn between(&self, from: Length, to: Length) -> &[(Length, usize)] {
        let first = self
            .starts
            .partition_point(|(start, _)| *start <= from - self.longest);
        let rest = self.starts.get(first..).unwrap_or_default();
        let count = rest.partition_point(|(start, _)| *start < to);
        rest.get(..count).unwrap_or_default()
    }

    fn place(&self, start: Length, number: usize) -> usize {
        self.starts
            .partition_point(|other| *other < (start, number))
    }
}
