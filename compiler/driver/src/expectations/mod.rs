//! Holding the answer against what the design expects of it.

mod bound;
mod broken;
mod came_out;
mod judge;
mod panel;
mod sizes;

pub(crate) use broken::Broken;
pub(crate) use judge::Judge;
