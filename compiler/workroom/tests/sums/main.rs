//! The sums held to worked examples, to common practice and to properties that must always hold.
#![expect(
    clippy::unwrap_used,
    reason = "a test stops at the first broken promise"
)]
#![expect(
    clippy::too_many_lines,
    reason = "a table of cases is read from top to bottom"
)]
#![expect(
    clippy::arithmetic_side_effects,
    reason = "a test stops at the first broken promise"
)]

mod allowances;
mod bands;
mod curve_allowances;
mod curves;
mod folded;
mod heading;
mod joined;
mod making;
mod marks;
mod mitres;
mod needs;
mod notions;
mod outline;
mod pieces;
mod print;
mod properties;
mod rods;
mod row;
mod sample;
mod steps;
mod turn_of_cloth;
mod weight;
mod widths;
