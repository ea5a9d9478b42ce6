//! Every word of a sheet is known for what it is, sound or broken, in whatever order.
#![expect(
    clippy::arithmetic_side_effects,
    clippy::unwrap_used,
    clippy::string_slice,
    reason = "a test stops at the first broken promise"
)]

mod designs;
mod marks;
mod meanings;
mod table;
mod words;
