//! Search for a layout of a given length, piece by piece from the start of the bolt.
//!
//! Pieces are laid behind a skyline, always in the valley that is used least (best fit: E. K. Burke,
//! G. Kendall and G. Whitwell, "A new placement heuristic for the orthogonal stock-cutting problem",
//! Operations Research 52, 2004). Of all partial layouts with as many pieces only those that waste least
//! are carried on (beam search: B. T. Lowerre, "The Harpy speech recognition system", 1976).
//!
//! A length is given, and not looked for, because then it is known how much cloth may be wasted: a
//! partial layout that wastes more can be given up for sure, however good the rest of it may get. Close
//! to the bound that leaves few, and the search soon ends either way.

mod carrying_on;
mod choices;
mod offer;
mod partial_layout;
mod skyline;
mod task;

use pelmet_measure::Length;

use self::carrying_on::Beam;
use self::task::Task;
use super::forms::{Form, Laid};
use super::steps::Steps;
use crate::given::LayoutCloth;

/// What came of the search.
pub(super) enum Sought<'forms> {
    /// A layout with nothing beyond the end.
    Found(Vec<Laid<'forms>>),
    /// None among the partial layouts carried on, or the steps ran out.
    InVain {
        /// Whether partial layouts were left out for there were too many: if none were, a wider beam
        /// finds nothing more.
        left_out: bool,
    },
}

/// Looks for a layout on one bolt with nothing beyond `end`, carrying on up to `width` partial layouts.
pub(super) fn laid_within<'forms>(
    cloth: &LayoutCloth,
    forms: &[(&'forms Form, u32)],
    end: Length,
    width: usize,
    steps: &mut Steps,
) -> Sought<'forms> {
    let Some(task) = Task::new(cloth, forms, end) else {
        return Sought::InVain { left_out: false };
    };
    let mut beam = Beam::new(&task);
    for _ in 0..forms.iter().map(|(_, count)| u64::from(*count)).sum() {
        if beam.lay_one_more(width, steps).is_none() {
            return Sought::InVain {
                left_out: beam.left_out(),
            };
        }
    }
    Sought::Found(beam.first())
}
