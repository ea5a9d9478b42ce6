//! The packet as people read it: sheets, drawings, and what is laid on the cloth at its true size.
//!
//! A sheet is a view: it prints what the packet holds and works nothing out. The rooms, in the order in which
//! one builds on another:
//!
//! - `text` says the packet's fixed values in words; `paper` knows the sizes of paper, and `parts` goes
//!   through the panels and pieces of a packet.
//! - `drawing` is what a drawing is made of: lines with a meaning, words, a scale.
//! - `to_scale` has the drawings that are smaller than what they show.
//! - `content` is what a sheet is made of: blocks, tables, labels.
//! - `sheet` has the sheets, a module each, and the table that says what each of them is.
//! - `true_size` has outlines, templates and story sticks.
//! - `writer` writes all of it: as text, as a page, on paper, as SVG, PDF, DXF and for spreadsheets.
//! - `files` has the forms in which a packet is written, a row each; `comparisons` tells what is about more
//!   than one packet.

mod comparisons;
mod content;
mod drawing;
#[cfg(test)]
mod examples;
mod files;
mod paper;
mod parts;
mod sheet;
mod text;
mod to_scale;
mod true_size;
mod writer;

pub use comparisons::{Versions, changes_html, changes_text, cloths_text};
pub use files::{FORMS, PacketChoice, PacketFile, PacketForm, files, is_of_a_packet};
pub use paper::Paper;
pub use pelmet_packet::SheetKind;
pub use sheet::{SHEETS, sheet_title, sheet_word};
pub use writer::plain::{MINIMUM_WIDTH, TextOptions, text};
