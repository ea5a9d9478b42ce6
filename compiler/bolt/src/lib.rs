//! Placing pieces on the cloth, the bound no layout can beat, and the independent checker.
//!
//! [`lay`] begins with the shorter of two plain layouts, the workroom rule of thumb (`rule`) and
//! shelves (`shelves`), and looks for a shorter one (`search`) until none can buy less (`bound`) or
//! its [`Effort`] is spent. [`check`] verifies a layout by a path of its own: it shares no sum with
//! the code that lays. The same cloth and pieces give the same layout everywhere; what the search
//! may cost is counted in steps, never in time.

mod bound;
mod check;
mod cloth;
mod cut;
mod effort;
mod fault;
mod flaw;
mod lay;
mod layout;
mod outline;
mod print;
mod rows;
mod rule;
mod search;
mod section;
mod shelves;
mod slabs;
mod slots;
mod space;
mod trouble;
mod watch;

pub use check::check;
pub use cloth::{Cloth, Piece};
pub use effort::Effort;
pub use fault::{Direction, Fault};
pub use flaw::Flaw;
pub use lay::{lay, lay_watched, lay_with};
pub use layout::{BoltUsed, Layout, Placed};
pub use outline::{Corner, MAXIMUM_OUTLINE_CORNERS, Outline};
pub use section::Section;
pub use trouble::{LayoutTrouble, MAXIMUM_PIECES};
pub use watch::{Progress, Watch};
