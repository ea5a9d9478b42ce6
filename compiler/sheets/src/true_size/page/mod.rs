//! What every page at true size has: its paper with the bars to check it by, running text, and how many of
//! them lie side by side.

mod axis;
mod letters;
mod paper_sheet;
mod paragraph;

#[cfg(test)]
pub(crate) use axis::CLEAR;
pub(crate) use axis::{OVERLAP, TileAxis};
pub(crate) use letters::letters;
pub(crate) use paper_sheet::{Frame, PaperSheet};
pub(crate) use paragraph::{paragraph, shortened};
