//! Where one piece may lie: on which lines of the print, on what flaws it may not, and which places
//! two shapes deny each other.
//!
//! Everything here concerns one piece, or two; nothing knows a layout.

mod cut;
mod print;
mod slab;
mod slabs;
mod sound;
mod space;

pub(crate) use cut::{Cut, all_cuts, cuts_of};
pub(crate) use print::{Grid, Grids, PrintLines};
pub(crate) use slab::NoFit;
pub(crate) use slabs::Slabs;
pub(crate) use space::{Place, Space};
