//! The answer for a whole job, and one window of it.

use pelmet_measure::{Length, Mass};

use crate::{PanelMade, RodChecked, RodUnknown};

/// The answer for a whole job; windows in the order of the job.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Work {
    /// One for each window of the job.
    pub windows: Vec<WindowMade>,
}

/// One window worked out.
#[derive(Clone, PartialEq, Debug)]
pub struct WindowMade {
    /// One for each panel of the order, in its order; `None` where a mistake stopped the sums.
    pub panels: Vec<Option<PanelMade>>,
    /// The length the row must cover: rod or board and returns.
    pub to_cover: Length,
    /// The length the row covers: finished widths less overlaps.
    pub covered: Length,
    /// Finished position of each join of the row, measured from the row's left end.
    pub joins: Vec<Length>,
    /// What all its panels weigh, where every cloth of them states its weight.
    pub weight: Option<Mass>,
    /// What its rod makes of that weight, or why nothing can be said of it; `None` for a board.
    pub rod_check: Option<Result<RodChecked, RodUnknown>>,
}
