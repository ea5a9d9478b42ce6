//! The packet: everything a design emits, as one value, with its JSON Schema.
//!
//! [`assemble`] turns the sums of a job into a [`Packet`]; it computes nothing twice and every
//! sheet is a view of it, so no two outputs can disagree.

mod assemble;
mod lay;
pub mod packet;
mod schema;

pub use assemble::{Parts, assemble};
pub use lay::{ClothToLay, CutPiece, LaidCloth, cloths_to_lay};
pub use packet::{FORMAT, Packet};
pub use schema::schema;
