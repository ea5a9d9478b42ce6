//! The workroom rule of thumb, as a layout and as the length it takes.
//!
//! Each kind of piece is laid on its own, as many side by side as the width holds; each row of
//! pieces that the print holds takes the cut length rounded up to the repeat, on half-drop cloth
//! half a repeat more (C. Merrick and R. Day, "The Encyclopaedia of Curtains", pp. 116-119). Each
//! kind starts at its first place after the rows before it, and a row lies between flaws.

use pelmet_measure::Length;

use crate::given::{LayoutCloth, LayoutPiece};
use crate::layout::{Orientation, Placed};
use crate::places::{Cut, Place, Space, cuts_of};

/// What the rule of thumb makes of the pieces.
pub(crate) struct RuleOfThumb {
    /// Every piece in its place.
    pub placed: Vec<Placed>,
    /// What the rule takes of all bolts together, each to the end of its last row.
    pub length: Length,
}

/// Lays the pieces by the rule.
pub(crate) fn by_rule_of_thumb(cloth: &LayoutCloth, pieces: &[LayoutPiece]) -> RuleOfThumb {
    let mut rows = Rows {
        cloth,
        bolt: 0,
        next_row: Length::ZERO,
        end_of_rows: Length::ZERO,
        earlier_bolts: Length::ZERO,
        placed: Vec::new(),
    };
    for (index, piece) in (0..).zip(pieces) {
        rows.lay_kind(cuts_of(cloth, index, piece));
    }
    RuleOfThumb {
        length: rows.earlier_bolts + rows.end_of_rows,
        placed: rows.placed,
    }
}

/// Rows laid so far, bolt by bolt.
struct Rows<'cloth> {
    cloth: &'cloth LayoutCloth,
    bolt: u32,
    /// The next row starts at the first place from here on.
    next_row: Length,
    /// Where the last row ends on this bolt, its length rounded up.
    end_of_rows: Length,
    /// The lengths of all bolts before this one together, each to the end of its last row.
    earlier_bolts: Length,
    placed: Vec<Placed>,
}

impl Rows<'_> {
    /// Lays all copies of one kind of piece, the first of them in a row of its own.
    fn lay_kind(&mut self, cuts: impl Iterator<Item = Cut>) {
        let mut rest_of_row = None;
        for cut in cuts {
            let beside = rest_of_row.and_then(|rest| Some((rest, cut.place_in(&rest)?)));
            let (row, place) = beside.unwrap_or_else(|| self.start_row(&cut));
            self.placed
                .push(Placed::of(&cut, self.bolt, place, Orientation::Upright));
            let across = place.across + cut.width + self.cloth.gap;
            rest_of_row = Some(Space {
                near: Place { across, ..row.near },
                ..row
            });
        }
    }

    /// Starts a row, on the next bolt where this one ends too soon, and places its first cut.
    fn start_row(&mut self, cut: &Cut) -> (Space, Place) {
        let mut row = self.next_row_for(cut);
        let mut place = cut.place_in(&row);
        while place.is_none() && self.cloth.has_better_bolt(self.bolt, self.next_row) {
            self.start_bolt();
            row = self.next_row_for(cut);
            place = cut.place_in(&row);
        }
        let start = row.near.along;
        self.next_row = start + cut.allowed_length(self.cloth.gap);
        self.end_of_rows = row.far.along.min(start + cut.allowed_length(Length::ZERO));
        (row, place.unwrap_or(row.near))
    }

    fn next_row_for(&self, cut: &Cut) -> Space {
        let along = self.sound_row(cut);
        let near = Place {
            across: Length::ZERO,
            along,
        };
        Space {
            near,
            far: self.cloth.far_corner(),
        }
    }

    /// Where the next row may start; no part of it lies beside a flaw, for the rule knows no way round
    /// one.
    fn sound_row(&self, cut: &Cut) -> Length {
        let row = |along| Space {
            near: Place {
                across: Length::ZERO,
                along,
            },
            far: Place {
                across: self.cloth.usable_width,
                along: along + cut.length + cut.grids.drop_in_row(),
            },
        };
        let first_from = |from| cut.grids.row_at_or_after(from);
        self.cloth
            .past_flaws(self.bolt, self.next_row, first_from, row)
    }

    fn start_bolt(&mut self) {
        self.bolt = self.bolt.saturating_add(1);
        self.next_row = Length::ZERO;
        self.earlier_bolts += self.end_of_rows;
        self.end_of_rows = Length::ZERO;
    }
}
