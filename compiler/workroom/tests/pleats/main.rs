//! Pleat rules laid out, folded and checked.
#![expect(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    clippy::arithmetic_side_effects,
    reason = "a test stops at the first broken promise"
)]

mod checked;
mod laid_out;
mod never_panics;
mod properties;
mod published;
mod refused;
mod rules;
mod stitched;
