//! What is laid.

use pelmet_measure::Length;

use super::outline::OutlinePolygon;

/// A piece as the layout sees it, upright: width across the bolt, length along it.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct LayoutPiece {
    /// Cut width, across the bolt.
    pub width: Length,
    /// Cut length, along the bolt.
    pub length: Length,
    /// How many are cut alike: its copies, numbered from 0.
    pub quantity: u32,
    /// Distance from the piece's top to the point that must lie on a line of the repeat along;
    /// `None` where the print does not matter.
    ///
    /// On half-drop cloth a piece held along but not across stands for the widths of a joined
    /// panel: its copies lie on the line and half a repeat beyond it by turns.
    pub phase_along: Option<Length>,
    /// Distance from the piece's left edge to the point that must lie on a line of the repeat
    /// across; `None` where it does not matter.
    pub phase_across: Option<Length>,
    /// The line it is cut along, within its width and length; `None` for a rectangle.
    ///
    /// Pieces with an outline may lie within one another's width and length. On cloth that is not
    /// one-way they may be turned end for end, unless the print holds them.
    pub outline: Option<OutlinePolygon>,
    /// Whether it may be cut from doubled cloth, folded along the middle of its width: its left half
    /// is the image of its right half.
    pub on_fold: bool,
}
