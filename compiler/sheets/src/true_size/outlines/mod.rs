//! The lines that pieces are cut and sewn by: pieces alike together.

mod drawing;
mod join_seams;
mod points;
mod shared;
mod whole;

pub(crate) use drawing::outline_drawing;
pub(crate) use join_seams::join_seams;
pub(crate) use points::{MOTIF, cross, points};
pub(crate) use shared::{SharedOutline, outlines};
pub(crate) use whole::{Arcs, InnerLine, OutlineVertex, WholePiece};
