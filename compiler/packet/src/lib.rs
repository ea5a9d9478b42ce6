//! The packet: everything a design emits, as one value, with its JSON Schema.
//!
//! [`build`] goes all the way from a design's text. [`assemble`] turns the sums of a job into a [`Packet`]; it computes nothing twice and every
//! sheet is a view of it, so no two outputs can disagree.

mod assemble;
mod build;
mod changes;
mod cut_line;
mod lay;
pub mod packet;
mod schema;
mod watch;
mod ways;

pub use assemble::{Parts, assemble};
pub use build::{
    ASKED_FOR, Built, Checked, ClothsAsked, ClothsCompared, MAXIMUM_MISTAKES_TOLD, build,
    build_with, check, compare_cloths,
};
pub use changes::{
    CHANGES_FORMAT, Change, ChangeKind, ChangesReport, JobChanges, Named, Part, changes,
};
pub use lay::{ClothToLay, CutPiece, LaidCloth, cloths_to_lay};
pub use packet::{FORMAT, Packet};
pub use schema::{changes_schema, schema};
pub use watch::{Search, Watch};
pub use ways::WayCompared;
