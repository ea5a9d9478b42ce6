//! Layouts as a workroom makes them, without a search: in rows.
//!
//! The rule of thumb is what every layout is measured against, and one that is never exceeded. Shelves
//! (level-oriented packing: E. G. Coffman, M. R. Garey, D. S. Johnson and R. E. Tarjan, "Performance
//! bounds for level-oriented two-dimensional packing algorithms", SIAM Journal on Computing 9, 1980)
//! are nearly as plain and mostly shorter; the search begins with the better of them.

mod rule_of_thumb;
mod shelves;
mod slots;

pub(crate) use rule_of_thumb::{RuleOfThumb, by_rule_of_thumb};
pub(crate) use shelves::{ShelfLength, on_shelves};
