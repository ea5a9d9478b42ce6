//! From worked-out panels to pieces laid out on cloth.

mod cloth_laid;
mod cloth_to_lay;
mod cut_line;
mod cut_pieces;
mod laid_cloth;
mod lay_all;
mod trial;
mod ways;

pub use cloth_to_lay::{ClothToLay, CutPiece, cloths_to_lay};
pub use laid_cloth::{LaidCloth, RailroadTried};
pub(crate) use lay_all::{lay_all, no_packet};
pub(crate) use trial::{Tried, Unfit};
pub(crate) use ways::{Settled, tried};
