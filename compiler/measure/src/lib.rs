//! Lengths, quantities, units and fractions: exact, checked and printed as a workroom writes them.
//!
//! Two kinds of number live here. A [`Quantity`] is what an expression in a design is worth: an
//! exact [`Ratio`] with its [`Dimension`]; its sums give a finding where they have no answer. A
//! [`Length`], [`Area`], [`Mass`] or [`Money`] is what the workroom reckons with: a whole number of
//! a very small unit. A quantity becomes one of these once, by rounding to the nearest, and is
//! refused there if it is larger than any real design needs. The limits leave so much room that
//! the operators of these types, which saturate, never get near their ends in a real sum.
//!
//! Text comes last: a [`Style`] says how a house writes lengths, weights and areas.

mod area;
mod dimension;
mod exact;
mod length;
mod mass;
mod money;
mod operators;
mod quantity;
mod style;
mod text;
mod unit;

pub use area::Area;
pub use dimension::Dimension;
pub use exact::{Ratio, ratio};
pub use length::Length;
pub use mass::{Mass, MassPerArea};
pub use money::Money;
pub use quantity::{Quantity, QuantityFinding};
pub use style::{Style, System};
pub use text::number_text;
pub use unit::Unit;
