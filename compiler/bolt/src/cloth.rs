//! What is laid, and what it is laid on.

use pelmet_measure::Length;

use crate::flaw::Flaw;
use crate::outline::Outline;
use crate::space::Place;

/// The cloth as the layout sees it.
///
/// Places on it are measured across from the left end of the usable width, and along from the
/// start of the bolt. The start of every bolt and the left end of the usable width are lines of
/// the print.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Cloth {
    /// The width pieces may use: the whole width less the selvages.
    pub usable_width: Length,
    /// The least distance between two pieces, for the shears.
    pub gap: Length,
    /// The print's period along the bolt, where it has one.
    pub repeat_along: Option<Length>,
    /// The print's period across the bolt, where it has one.
    pub repeat_across: Option<Length>,
    /// Whether every other column of the print, one repeat across wide, lies half a repeat
    /// further along.
    pub half_drop: bool,
    /// Whether the print or pile has a top, so that no piece may be turned end for end.
    pub one_way: bool,
    /// The longest continuous length to be had; `None` where the bolt has no end that matters.
    pub bolt_length: Option<Length>,
    /// Lengths are bought in multiples of this.
    pub buying_step: Length,
    /// What no piece may lie on.
    pub flaws: Vec<Flaw>,
}

impl Cloth {
    /// The last place of a bolt; a bolt without end goes on further than any layout can.
    pub(crate) fn far_corner(&self) -> Place {
        let endless = Length::from_nanometres(i64::MAX);
        Place {
            across: self.usable_width,
            along: self.bolt_length.unwrap_or(endless),
        }
    }
}

/// A piece, upright: width across the bolt, length along it.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Piece {
    /// Cut width, across the bolt.
    pub width: Length,
    /// Cut length, along the bolt.
    pub length: Length,
    /// How many are cut.
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
    pub outline: Option<Outline>,
    /// Whether it may be cut from doubled cloth, folded along the middle of its width: its left half
    /// is the image of its right half.
    pub on_fold: bool,
}
