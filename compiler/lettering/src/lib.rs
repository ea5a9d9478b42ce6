//! The letters that sheets are printed in: how wide a text is, which signs there are, and the part of
//! the typeface that a document carries with it.
//!
//! The typeface is DejaVu Sans in two weights, under the Bitstream Vera licence, which lets it be
//! embedded. Letters are set one beside the other, without pairs drawn closer: that is right for
//! scripts that run from left to right in separate letters, and [`first_not_printable`] finds the others.

mod coverage;
mod subset;
mod typeface;

pub use coverage::{composed, first_not_printable};
pub use subset::{FontSign, FontSubset};
pub use typeface::{FontMetrics, FontWeight};
