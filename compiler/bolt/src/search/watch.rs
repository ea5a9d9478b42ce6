//! Watching a search, and ending it early.

use std::cell::{Cell, RefCell};
use std::ops::ControlFlow;

use pelmet_measure::Length;

use super::effort::SearchEffort;

/// How far a search has come.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub struct SearchProgress {
    /// The steps spent so far.
    pub spent: u64,
    /// The steps it may spend; it may well need fewer.
    pub allowed: u64,
    /// What the shortest layout found so far buys, over all bolts.
    pub bought: Length,
}

/// Is told now and then how far a search has come, and says whether it is to go on. A search that is
/// broken off keeps the best layout it has found.
pub type SearchWatch<'watcher> = dyn FnMut(&SearchProgress) -> ControlFlow<()> + 'watcher;

/// So many steps are spent from one report to the next.
const STEPS_BETWEEN: u64 = 500_000;

/// A search that is being watched.
///
/// What it counts lies in cells, for several parts of the steps are out at once, and all count into the
/// same watch.
pub(crate) struct Watched<'search> {
    watch: RefCell<&'search mut SearchWatch<'search>>,
    allowed: u64,
    spent: Cell<u64>,
    next_report: Cell<u64>,
    bought: Cell<Length>,
    is_stopped: Cell<bool>,
}

impl<'search> Watched<'search> {
    /// A search that has not begun: it starts from a layout that buys so much.
    pub(crate) fn new(
        watch: &'search mut SearchWatch<'search>,
        effort: SearchEffort,
        bought: Length,
    ) -> Watched<'search> {
        Watched {
            watch: RefCell::new(watch),
            allowed: effort.count(),
            spent: Cell::new(0),
            next_report: Cell::new(0),
            bought: Cell::new(bought),
            is_stopped: Cell::new(false),
        }
    }

    /// Counts steps, and reports where it is time to.
    pub(super) fn spend(&self, steps: u64) {
        let spent = self.spent.get().saturating_add(steps);
        self.spent.set(spent);
        if spent >= self.next_report.get() && !self.is_stopped() {
            self.next_report.set(spent.saturating_add(STEPS_BETWEEN));
            self.report();
        }
    }

    /// A layout was found that buys so much.
    pub(super) fn found(&self, bought: Length) {
        self.bought.set(bought.min(self.bought.get()));
    }

    /// Whether the search was broken off.
    pub(crate) fn is_stopped(&self) -> bool {
        self.is_stopped.get()
    }

    /// Tells the watch how far the search has come.
    fn report(&self) {
        let progress = SearchProgress {
            spent: self.spent.get(),
            allowed: self.allowed,
            bought: self.bought.get(),
        };
        if let Ok(mut watch) = self.watch.try_borrow_mut() {
            self.is_stopped.set(watch(&progress).is_break());
        }
    }
}
