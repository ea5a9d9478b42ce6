//! Where the print lets a piece lie.

use pelmet_measure::Length;

use super::space::Place;
use crate::given::{LayoutCloth, LayoutPiece};

/// Lines of the print in one direction: `first`, and on from there in steps of `period`.
///
/// A period of zero is no print at all: every place from zero on is a line.
#[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub(crate) struct PrintLines {
    /// The first line, less than a period from zero.
    pub first: Length,
    /// The distance from one line to the next.
    pub period: Length,
}

impl PrintLines {
    const ANYWHERE: PrintLines = PrintLines {
        first: Length::ZERO,
        period: Length::ZERO,
    };

    /// Where an edge may lie for the point `phase` beyond it to fall on a multiple of `period`.
    fn holding(phase: Length, period: Length) -> PrintLines {
        let first = phase.round_up_to(period) - phase;
        PrintLines { first, period }
    }

    /// The same lines, each `by` further on: the first of them is again the one less than a period
    /// from zero.
    fn moved(self, by: Length) -> PrintLines {
        PrintLines::holding(-(self.first + by), self.period)
    }

    /// Whether they are no lines at all, for nothing is held.
    pub(crate) fn are_anywhere(self) -> bool {
        !self.period.is_positive()
    }

    /// The first line that is not before `from`.
    pub(crate) fn at_or_after(self, from: Length) -> Length {
        self.first + (from - self.first).round_up_to(self.period)
    }

    /// The last line that is not after `to`; `None` where all are.
    pub(crate) fn at_or_before(self, to: Length) -> Option<Length> {
        let line = self.first + (to - self.first).round_down_to(self.period);
        (!line.is_negative()).then_some(line)
    }
}

/// Where the print lets a piece's top left corner lie: on any of the lines across, with any of
/// the lines along.
#[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub(crate) struct Grid {
    /// The lines for its left edge, from the left end of the usable width.
    pub across: PrintLines,
    /// The lines for its top, from the start of the bolt.
    pub along: PrintLines,
}

impl Grid {
    /// The first place of the grid that is not before `from` in either direction.
    pub(crate) fn at_or_after(self, from: Place) -> Place {
        Place {
            across: self.across.at_or_after(from.across),
            along: self.along.at_or_after(from.along),
        }
    }
}

/// All the grids of one piece: a second one on half-drop cloth, for the columns that lie lower.
#[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub(crate) struct Grids {
    /// The grid of a piece that has only one.
    pub first: Grid,
    second: Option<Grid>,
    /// The lines along of this copy and of its neighbours; both the same without a half drop.
    row: [PrintLines; 2],
}

impl Grids {
    /// The grids that hold a copy of `piece` to the print of `cloth`.
    pub(crate) fn of(cloth: &LayoutCloth, piece: &LayoutPiece, copy: u32) -> Grids {
        let along = held(piece.phase_along, cloth.repeat_along);
        let across = held(piece.phase_across, cloth.repeat_across);
        let plain = Grid { across, along };
        if !cloth.half_drop || piece.phase_along.is_none() {
            return Grids {
                first: plain,
                second: None,
                row: [along, along],
            };
        }
        let lower = along.moved(along.period.divided(2));
        let (first, second) = match (piece.phase_across, cloth.repeat_across) {
            // Held across, the piece says by its column which half of the drop it takes: one grid has
            // the columns that lie as the first does, the other those half a repeat lower.
            (Some(phase), Some(column)) => {
                let even = PrintLines::holding(phase, column * 2);
                let odd = even.moved(column);
                (
                    Grid {
                        across: even,
                        along,
                    },
                    Some(Grid {
                        across: odd,
                        along: lower,
                    }),
                )
            }
            // Held along alone it could take either everywhere. But its copies are the widths of one
            // panel, sewn side by side: they must take the halves by turns.
            _ if copy.is_multiple_of(2) => (plain, None),
            _ => (
                Grid {
                    across,
                    along: lower,
                },
                None,
            ),
        };
        Grids {
            first,
            second,
            row: [along, lower],
        }
    }

    /// Every grid that lets the piece lie somewhere, the one of the higher columns first.
    pub(crate) fn iter(&self) -> impl Iterator<Item = Grid> + use<> {
        [self.first].into_iter().chain(self.second)
    }

    /// Whether the print leaves the piece free.
    pub(crate) fn are_anywhere(&self) -> bool {
        self.iter()
            .all(|grid| grid.across.are_anywhere() && grid.along.are_anywhere())
    }

    /// Where a row of copies may start, at or after `from`: on the higher of two lines that follow each
    /// other, whichever half of the drop it belongs to.
    pub(crate) fn row_at_or_after(&self, from: Length) -> Length {
        let [own, other] = self.row;
        own.at_or_after(from).min(other.at_or_after(from))
    }

    /// How much lower than its row's start the print may hold a copy: nothing, or the larger half
    /// of the repeat for a half drop. A repeat of an odd number of nanometres has two unlike halves.
    pub(crate) fn drop_in_row(&self) -> Length {
        let [own, other] = self.row;
        let apart = (own.first - other.first).abs();
        if apart.is_zero() {
            Length::ZERO
        } else {
            apart.max(own.period - apart)
        }
    }
}

fn held(phase: Option<Length>, repeat: Option<Length>) -> PrintLines {
    match (phase, repeat) {
        (Some(phase), Some(repeat)) => PrintLines::holding(phase, repeat),
        _ => PrintLines::ANYWHERE,
    }
}
