//! Pieces in their places: what a layout is, how it is cut apart, and what is bought for it.

mod arrangement;
mod bands;
mod bought;
mod edges;
mod finished;
mod placed;
mod sections;

pub(crate) use arrangement::Arrangement;
pub use bands::LayoutBand;
pub use bought::BoltLengths;
pub(crate) use bought::{bought, bought_at_least};
pub use finished::Layout;
pub use placed::{Orientation, Placed};
pub use sections::BoltSection;
