//! Placing pieces on the cloth, the bound no layout can beat, and the independent checker.
//!
//! [`lay`] begins with the shorter of two plain layouts, the workroom rule of thumb and shelves, and
//! looks for a shorter one until none can buy less or its [`SearchEffort`] is spent. [`check`] verifies
//! a layout by a path of its own: it shares no sum with the code that lays. The same cloth and pieces
//! give the same layout everywhere; what the search may cost is counted in steps, never in time.
//!
//! To operations research this is strip packing, on a strip with print lines and flaws, of pieces
//! that seldom are rectangles. The rooms, each of which knows only those before it:
//!
//! | room | what lives there |
//! |---|---|
//! | `given` | the cloth and the pieces to lay on it, as whoever calls states them |
//! | `places` | where one piece may lie: the lines of the print, flaws, and what two shapes deny each other |
//! | `layout` | pieces in their places: bands, sections on the fold, what is bought |
//! | `rows` | layouts a workroom makes without a search: the rule of thumb, and shelves |
//! | `bound` | lengths that no layout can be shorter than |
//! | `search` | the search for a shorter layout, in three ways that take turns |
//! | `lay` | refuses what cannot be laid, and chooses between the layouts |
//! | `check` | the independent checker; it knows `given` and `layout`, and of these no sums |

mod bound;
mod check;
mod given;
mod lay;
mod layout;
mod places;
mod rows;
mod search;

pub use check::{BoltDirection, CheckerFinding, check};
pub use given::{
    BoltFlaw, LayingFinding, LayoutCloth, LayoutPiece, MAXIMUM_OUTLINE_CORNERS, MAXIMUM_PIECES,
    OutlineCorner, OutlinePolygon,
};
pub use lay::{lay, lay_watched, lay_with};
pub use layout::{BoltLengths, BoltSection, Layout, LayoutBand, Orientation, Placed};
pub use search::{SearchEffort, SearchProgress, SearchWatch};
