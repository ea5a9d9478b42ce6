//! Watching how the cloths of a design are laid out.

use std::ops::ControlFlow;

use pelmet_bolt::SearchProgress;
use pelmet_measure::Style;

/// A search for a shorter layout that is under way.
#[derive(Copy, Clone, Debug)]
pub struct Search<'design> {
    /// What it is for.
    pub stage: Stage,
    /// The name of the cloth.
    pub cloth: &'design str,
    /// How far it has come.
    pub progress: SearchProgress,
    /// What the shortest layout found so far buys, as the house writes it.
    pub bought: &'design str,
}

/// What a layout is searched for.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum Stage {
    /// To compare the ways in which the pieces of a cloth may lie; one of several such searches.
    Comparing,
    /// To cut by.
    Laying,
}

/// Is told now and then how far a search has come, and says whether it is to go on.
pub type ClothWatch<'watcher> = dyn FnMut(&Search<'_>) -> ControlFlow<()> + 'watcher;

/// Lets every search go on to its end.
pub(crate) fn unwatched(_: &Search<'_>) -> ControlFlow<()> {
    ControlFlow::Continue(())
}

/// What tells `watch` of the search on one cloth.
pub(crate) fn watched<'w>(
    stage: Stage,
    cloth: &'w str,
    style: &'w Style,
    watch: &'w mut ClothWatch<'_>,
) -> impl FnMut(&SearchProgress) -> ControlFlow<()> + 'w {
    move |progress| {
        watch(&Search {
            stage,
            cloth,
            progress: *progress,
            bought: &style.bolt(progress.bought),
        })
    }
}
