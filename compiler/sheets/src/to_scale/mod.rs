//! The drawings that are smaller than what they show: a window as it hangs, a cloth as it is laid out, a
//! panel as it is folded, a piece with its measures. Each fits a page of either paper.

mod elevation;
mod folding;
mod layout;
mod piece;
#[cfg(test)]
pub(crate) mod tests;

pub(crate) use elevation::elevation;
pub(crate) use folding::folding;
pub(crate) use layout::layout;
pub(crate) use piece::{cut_alike, is_rectangle, piece, pieces};
