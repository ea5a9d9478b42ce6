//! Placing pieces on the cloth, the bound no layout can beat, and the independent checker.
//!
//! [`lay`] gives the shorter of two layouts, the workroom rule of thumb (`rule`) and shelves
//! (`shelves`), with a bound that no layout can beat (`bound`). [`check`] verifies a layout by a
//! path of its own: it shares no sum with the code that lays. The same cloth and pieces give the
//! same layout everywhere; what a search may cost is counted in steps, never in time.

mod bound;
mod check;
mod cloth;
mod cut;
mod fault;
mod lay;
mod layout;
mod print;
mod rule;
mod shelves;
mod slots;
mod space;
mod trouble;

pub use check::check;
pub use cloth::{Cloth, Piece};
pub use fault::{Direction, Fault};
pub use lay::lay;
pub use layout::{BoltUsed, Layout, Placed};
pub use trouble::{LayoutTrouble, MAXIMUM_PIECES};
