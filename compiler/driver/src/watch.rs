//! Watching how the cloths of a design are laid out.

use std::ops::ControlFlow;

use pelmet_bolt::SearchProgress;

/// A search for a shorter layout that is under way.
#[derive(Copy, Clone, Debug)]
pub struct Search<'design> {
    /// The name of the cloth.
    pub cloth: &'design str,
    /// How far it has come.
    pub progress: SearchProgress,
    /// What the shortest layout found so far buys, as the house writes it.
    pub bought: &'design str,
}

/// Is told now and then how far a search has come, and says whether it is to go on.
pub type Watch<'watcher> = dyn FnMut(&Search<'_>) -> ControlFlow<()> + 'watcher;

/// Lets every search go on to its end.
pub(crate) fn unwatched(_: &Search<'_>) -> ControlFlow<()> {
    ControlFlow::Continue(())
}
