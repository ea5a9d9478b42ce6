//! Diagnostics as text: drawn for people, plain for screen readers and pipes, JSON for programs.
//!
//! A fix is written out in the JSON only; what a person is to type stands in the help.

mod excerpt;
mod human;
mod json;
mod plain;
mod summary;
mod visible;
mod wrapped;

pub use human::{HumanOptions, human};
pub use json::json;
pub use plain::plain;
pub use summary::summary;

pub(crate) use wrapped::wrapped;
