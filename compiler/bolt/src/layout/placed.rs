//! One piece in its place.

use pelmet_measure::Length;

use crate::places::{Cut, Place};

/// One copy of a piece in its place.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub struct Placed {
    /// Which piece, by index among those given.
    pub piece: usize,
    /// Which of its copies, from 0.
    pub copy: u32,
    /// Which bolt it is cut from, from 0.
    pub bolt: u32,
    /// From the left end of the usable width to the piece's left edge.
    pub across: Length,
    /// From the start of the bolt to the edge of the piece that is nearer to it.
    pub along: Length,
    /// Which way up it lies.
    pub orientation: Orientation,
}

/// Which way up a piece lies on the cloth.
#[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub enum Orientation {
    /// Its top is nearer to the start of the bolt.
    Upright,
    /// It is turned end for end, by half a turn: its foot is nearer to the start of the bolt, and its
    /// right edge to the left end of the usable width.
    Turned,
}

impl Orientation {
    /// Whether it is turned end for end.
    #[must_use]
    pub const fn is_turned(self) -> bool {
        match self {
            Orientation::Upright => false,
            Orientation::Turned => true,
        }
    }
}

impl Placed {
    /// A cut put in a place on a bolt.
    pub(crate) fn of(cut: &Cut, bolt: u32, place: Place, orientation: Orientation) -> Placed {
        let Place { across, along } = place;
        Placed {
            piece: cut.piece,
            copy: cut.copy,
            bolt,
            across,
            along,
            orientation,
        }
    }

    /// Bolt by bolt, along each bolt, then across it. Its number tells apart even what a broken layout
    /// puts in one place, so that the order never hangs on the order before it.
    pub(super) fn cutting_order(&self) -> (u32, Length, Length, usize, u32) {
        (self.bolt, self.along, self.across, self.piece, self.copy)
    }
}
