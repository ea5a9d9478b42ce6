//! Reading each kind of item. One file a kind.

mod curve;
mod expectation;
mod fabric;
mod flaws;
mod heading;
mod making;
mod making_band;
mod making_edges;
mod making_layers;
mod making_notions;
mod notion;
mod outline;
mod panel;
mod places;
mod pleats;
mod settings;
mod stitched;
mod support;
mod treatment;
mod window;
mod words;
mod work_steps;

pub(crate) use expectation::read_expectations;
pub(crate) use fabric::unit_of_length;
pub(crate) use settings::{Settings, read_settings};
