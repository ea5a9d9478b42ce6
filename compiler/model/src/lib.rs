//! The vocabulary of the trade as data, with no sums in it.
//!
//! Three rooms hold what passes from one part of the compiler to the next: [`mod@order`], what the maker
//! asks for, everything named and measured and nothing worked out; [`mod@answer`], what the sums make of
//! it; and [`mod@finding`], what they find on the way. Closed sets are enums, each with its words once.
//!
//! Nothing here knows of text: who wrote which number where is kept in the design crate.
//!
//! Coordinates of a panel are those of its made-up flat state, lying face up with the heading
//! away from the maker: `across` runs from the left edge to the right, `down` from the made-up
//! top edge towards the lower edge.

pub mod answer;
mod closed_set;
pub mod finding;
pub mod geometry;
pub mod order;
mod parts;
mod shape;

pub use answer::*;
pub use finding::*;
pub use geometry::Point;
pub use order::*;
pub use parts::{BandEdge, EdgeKind, End, Layer, LayerKind};
pub use shape::{Circle, Corner, Curve, Edge, Relief, Shape};
