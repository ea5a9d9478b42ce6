//! What is given: the cloth, the pieces to lay on it, and why they may not be laid at all.
//!
//! Nothing here computes where a piece may lie; that begins in `places`.

mod cloth;
mod finding;
mod flaw;
mod outline;
mod piece;

pub use cloth::LayoutCloth;
pub use finding::{LayingFinding, MAXIMUM_PIECES};
pub use flaw::BoltFlaw;
pub use outline::{MAXIMUM_OUTLINE_CORNERS, OutlineCorner, OutlinePolygon};
pub use piece::LayoutPiece;
