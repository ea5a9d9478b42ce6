//! What a drawing is: a list of what is drawn, one list, whatever it is written as.
//!
//! Lengths are millimetres on the paper, from its left upper corner, x to the right and y down. What
//! a line means is said by its [`LineKind`]; how that looks is said once, in `looks`, for every writer.

pub(crate) mod clip;
pub(crate) mod dimension;
mod elements;
mod hatch;
mod inside;
mod lettering;
mod line_kind;
mod lines;
mod looks;
mod point;
mod printed_file;
mod scale;
mod text_size;
mod words_apart;

pub(crate) use elements::{Drawing, Element};
pub(crate) use hatch::hatch;
pub(crate) use inside::inside;
pub(crate) use lettering::{Lettering, LetteringRun};
pub(crate) use line_kind::LineKind;
pub(crate) use lines::{lines, longest_word};
pub(crate) use looks::{CLEAR_OF_WORDS, Look, Stroke, look};
pub(crate) use point::{PaperPoint, at, rectangle};
pub(crate) use printed_file::{Bookmark, PrintedFile};
#[cfg(test)]
pub(crate) use scale::SCALES;
pub(crate) use scale::{PAGE_HEIGHT, PAGE_WIDTH, Scale};
pub(crate) use text_size::{Align, TextSize, fits, width_of};
pub(crate) use words_apart::WordsApart;
