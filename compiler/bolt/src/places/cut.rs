//! The single pieces that are cut: every copy of every kind.

use pelmet_measure::Length;

use super::print::Grids;
use super::space::{Place, Space};
use crate::given::{LayoutCloth, LayoutPiece};

/// One copy of a piece, to be placed.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub(crate) struct Cut {
    /// Which piece, by index among those given.
    pub piece: usize,
    /// Which of its copies, from 0.
    pub copy: u32,
    /// Across the bolt.
    pub width: Length,
    /// Along the bolt.
    pub length: Length,
    /// Where the print lets its top left corner lie.
    pub grids: Grids,
}

impl Cut {
    /// The place nearest the start of the bolt that is not before `from` along it and leaves room
    /// within the `usable` width; where no place does, the first of all that are not before `from`.
    pub(crate) fn first_place(&self, from: Length, usable: Length) -> Place {
        let corner = Place {
            across: Length::ZERO,
            along: from,
        };
        self.grids
            .iter()
            .map(|grid| grid.at_or_after(corner))
            .filter(|place| place.across + self.width <= usable)
            .min_by_key(|place| place.along)
            .unwrap_or_else(|| self.grids.first.at_or_after(corner))
    }

    /// The leftmost place within `space`; `None` where the cut does not fit.
    pub(crate) fn place_in(&self, space: &Space) -> Option<Place> {
        self.grids
            .iter()
            .map(|grid| grid.at_or_after(space.near))
            .filter(|place| self.space_at(*place).is_within(space))
            .min_by_key(|place| (place.across, place.along))
    }

    /// The cloth the cut takes at a place.
    pub(crate) fn space_at(&self, near: Place) -> Space {
        let far = Place {
            across: near.across + self.width,
            along: near.along + self.length,
        };
        Space { near, far }
    }

    /// The length of bolt the workroom allows for the cut and `gap` below it: where the print
    /// holds it, rounded up to the repeat, and half a repeat more for a half drop. The source is that
    /// of the rule of thumb, in `rows`.
    pub(crate) fn allowed_length(&self, gap: Length) -> Length {
        (self.length + gap).round_up_to(self.grids.first.along.period) + self.grids.drop_in_row()
    }
}

/// Every copy of every piece, in the order given: piece by piece.
pub(crate) fn all_cuts(cloth: &LayoutCloth, pieces: &[LayoutPiece]) -> Vec<Cut> {
    (0..)
        .zip(pieces)
        .flat_map(|(index, piece)| cuts_of(cloth, index, piece))
        .collect()
}

/// Every copy of one piece, which is the one with this index among those given.
pub(crate) fn cuts_of(
    cloth: &LayoutCloth,
    index: usize,
    piece: &LayoutPiece,
) -> impl Iterator<Item = Cut> {
    (0..piece.quantity).map(move |copy| Cut {
        piece: index,
        copy,
        width: piece.width,
        length: piece.length,
        grids: Grids::of(cloth, piece, copy),
    })
}
