//! Holding the answer against what the design expects of it.

mod bound;
mod broken;
mod judge;
mod panel;

pub(crate) use broken::Broken;
pub(crate) use judge::Judge;
