//! Pleat rules laid out, folded and checked.
#![expect(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    clippy::arithmetic_side_effects,
    reason = "a test stops at the first broken promise"
)]
#![expect(
    clippy::too_many_lines,
    reason = "a table of cases is read from top to bottom"
)]

mod checked;
mod laid_out;
mod mirror;
mod never_panics;
mod properties;
mod published;
mod refused;
mod rounding;
mod rules;
mod searched;
mod stitched;
mod told_once;
