//! The driver: takes a design from its text to its diagnostics and its packet.
//!
//! [`check`] reads a design, does the sums, lays every cloth out and holds the answer against what the
//! design expects; [`build`] also puts the packet together. [`assemble`] turns the sums of a job into a
//! [`Packet`](pelmet_packet::Packet): it computes nothing twice, and knows nothing of the text.

mod assemble;
mod expectations;
mod findings;
mod layout;
mod other_cloths;
mod pipeline;
mod purpose;
mod sequence;
mod watch;
mod words;

pub use assemble::{Parts, assemble};
pub use layout::{ClothToLay, CutPiece, LaidCloth, RailroadTried, cloths_to_lay};
pub use other_cloths::{ASKED_FOR, ClothsAsked, ClothsCompared, compare_cloths};
pub use pipeline::{Built, Checked, MAXIMUM_ERRORS_TOLD, build, build_with, check, check_with};
pub use watch::{ClothWatch, Search, Stage};
