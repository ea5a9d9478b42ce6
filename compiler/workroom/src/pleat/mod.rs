//! Laying a pleat rule out on a strip of cloth, and what is wrong with pleats so laid.
//!
//! A rule is a strip of pieces (`strip`, `piece`) whose numbers may be open: `counts` tries how often
//! each is made, `solve` settles the lengths so that the width comes out, `choose` takes the nearest to
//! what the maker likes best, and `walk` lays them down one after another, each pleat as its row says
//! (`laid`). What cannot be laid is told by `refuse`; what can, but should not, by `check`.

mod check;
mod choose;
mod counts;
mod follow;
mod halves;
mod laid;
mod lay_out;
mod limits;
mod piece;
mod place;
mod reach;
mod refuse;
pub(crate) mod rule;
mod solve;
mod strip;
mod tolerance;
pub(crate) mod turn_of_cloth;
mod walk;
pub(crate) mod width;

pub use check::check;
pub use lay_out::{lay_out, no_pleats};
pub use tolerance::tolerance;
