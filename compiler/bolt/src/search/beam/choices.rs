//! Which pieces might be laid next, the best of them.

use pelmet_measure::Length;

/// A piece that might be laid next. The one that sorts first is the best; of those that rank alike it is
/// the one that was offered first, so that the choice never hangs on chance.
#[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub(super) struct Choice {
    pub rank: u64,
    /// Which partial layout it is laid in, by its number among those carried on.
    pub carries_on: usize,
    /// How many valleys have to be given up before the one it lies in is the lowest.
    pub wasted_valleys: usize,
    /// Which form is laid, by number.
    pub form: usize,
    /// Its left edge, from the left end of the usable width.
    pub across: Length,
    /// Its top, from the start of the bolt.
    pub along: Length,
}

/// The best of the choices that were added.
///
/// Far more are offered than can be kept, so what is kept is let grow to twice as many and then cut
/// back at the median, which takes no sorting; what is worse than the last cut is not even kept. Which
/// ones are left in the end is the same as if all had been sorted.
pub(super) struct Choices {
    most: usize,
    kept: Vec<Choice>,
    /// Whatever is no better than this is not among the best.
    limit: Option<Choice>,
}

impl Choices {
    /// None yet, and in the end no more than so many.
    pub(super) fn of_best(most: usize) -> Choices {
        Choices {
            most: most.max(1),
            kept: Vec::new(),
            limit: None,
        }
    }

    /// Adds one, unless as many are better.
    pub(super) fn add(&mut self, choice: Choice) {
        if self.limit.is_some_and(|limit| limit <= choice) {
            return;
        }
        self.kept.push(choice);
        if self.kept.len() >= self.most.saturating_mul(2) {
            self.leave_out();
        }
    }

    /// Those that are left, the best first.
    pub(super) fn in_order(mut self) -> Vec<Choice> {
        self.leave_out();
        self.kept.sort_unstable();
        self.kept
    }

    fn leave_out(&mut self) {
        if self.most < self.kept.len() {
            let (_, limit, _) = self.kept.select_nth_unstable(self.most);
            self.limit = Some(*limit);
            self.kept.truncate(self.most);
        }
    }
}
