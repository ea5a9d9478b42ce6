//! Search among the orders in which pieces may be laid.
//!
//! An order is a short thing to change and to go back to, and every order is laid without overlaps: so
//! whatever it tries, this search has a layout. What it cannot do is shift a piece a little; that is left
//! to the search that begins with overlaps.

mod best_fit;
mod bolt;
mod bottom_left;
mod climb;
mod columns;
mod first_orders;

pub(super) use best_fit::best_fit;
pub(super) use bottom_left::bottom_left;
pub(super) use climb::{Way, best_order};
