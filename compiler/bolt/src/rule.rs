//! The workroom rule of thumb, as a layout and as the length it takes.
//!
//! Each kind of piece is laid on its own, as many side by side as the width holds; each row of
//! pieces that the print holds takes the cut length rounded up to the repeat, on half-drop cloth
//! half a repeat more (C. Merrick and R. Day, "The Encyclopaedia of Curtains", pp. 116-119). Each
//! kind starts at its first place after the rows before it, and a row lies between flaws.

use pelmet_measure::Length;

use crate::cut::{Cut, cuts_of};
use crate::space::{Place, Space};
use crate::{Cloth, Piece, Placed};

/// The layout of the rule of thumb.
pub(crate) struct RuleOfThumb {
    /// Every piece in its place.
    pub placed: Vec<Placed>,
    /// What the rule takes of all bolts together, each to the end of its last row.
    pub length: Length,
}

/// Lays the pieces by the rule.
pub(crate) fn by_rule_of_thumb(cloth: &Cloth, pieces: &[Piece]) -> RuleOfThumb {
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
    cloth: &'cloth Cloth,
    bolt: u32,
    /// The next row starts at the first place from here on.
    next_row: Length,
    /// Where the last row ends on this bolt, its length rounded up.
    end_of_rows: Length,
    /// What earlier bolts took.
    earlier_bolts: Length,
    placed: Vec<Placed>,
}

impl Rows<'_> {
    fn lay_kind(&mut self, cuts: impl Iterator<Item = Cut>) {
        let mut rest_of_row = None;
        for cut in cuts {
            let beside = rest_of_row.and_then(|rest| Some((rest, cut.place_in(&rest)?)));
            let (row, place) = beside.unwrap_or_else(|| self.start_row(&cut));
            self.placed.push(cut.placed(self.bolt, place, false));
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

    /// Where the next row may start; no part of it lies beside a flaw.
    fn sound_row(&self, cut: &Cut) -> Length {
        let mut along = cut.grids.row_at_or_after(self.next_row);
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
        while let Some(end) = self.cloth.end_of_flaw_under(self.bolt, &row(along)) {
            along = cut.grids.row_at_or_after(end);
        }
        along
    }

    fn start_bolt(&mut self) {
        self.bolt = self.bolt.saturating_add(1);
        self.next_row = Length::ZERO;
        self.earlier_bolts += self.end_of_rows;
        self.end_of_rows = Length::ZERO;
    }
}
