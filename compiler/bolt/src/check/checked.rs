//! A piece of the layout that is checked.

use pelmet_measure::Length;

use crate::given::LayoutPiece;
use crate::layout::Placed;

/// A piece that lies somewhere.
#[derive(Copy, Clone)]
pub(super) struct CheckedPiece<'layout> {
    /// Its index among those placed.
    pub index: usize,
    /// The piece that is cut there.
    pub piece: &'layout LayoutPiece,
    /// Where it lies.
    pub placed: &'layout Placed,
}

impl CheckedPiece<'_> {
    /// Its right edge, from the left end of the usable width.
    pub(super) fn right(&self) -> Length {
        self.placed.across + self.piece.width
    }

    /// Where it ends, from the start of the bolt.
    pub(super) fn end(&self) -> Length {
        self.placed.along + self.piece.length
    }
}
