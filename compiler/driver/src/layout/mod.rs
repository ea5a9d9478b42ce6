//! From worked-out panels to pieces laid out on cloth.

mod cut_line;
mod lay;
mod lay_all;
mod ways;

pub use lay::{ClothToLay, CutPiece, LaidCloth, cloths_to_lay};
pub(crate) use lay::{hanging_order, window_order};
pub(crate) use lay_all::{lay_all, no_packet};
pub use ways::WayCompared;
pub(crate) use ways::{Tried, Unfit, settle_ways, settled, tried};
