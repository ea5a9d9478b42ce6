//! What may be laid next in one partial layout: its lowest valleys, offered to all the pieces left.

use pelmet_measure::Length;

use super::choices::{Choice, Choices};
use super::partial_layout::PartialLayout;
use super::skyline::{Skyline, Square, Valley, square};
use super::task::Task;
use crate::places::{Grid, Place, Space};
use crate::search::forms::Form;
use crate::search::steps::Steps;

/// So many valleys, one after another, are offered to the next piece; to reach the later ones the
/// earlier ones are wasted.
const VALLEYS_OFFERED: usize = 2;

/// What is offered to the pieces left: a partial layout, some of its valleys given up.
pub(super) struct Offer<'run, 'forms> {
    task: &'run Task<'run, 'forms>,
    /// The number of the partial layout.
    carries_on: usize,
    /// The cloth under its pieces.
    laid: Square,
    /// The cloth wasted, that of the valleys given up too.
    wasted: Square,
    wasted_valleys: usize,
    /// The narrowest of the forms left, with the gap.
    narrowest: Length,
}

impl<'run, 'forms> Offer<'run, 'forms> {
    /// A partial layout as it is, by its number among those carried on.
    pub(super) fn of(
        task: &'run Task<'run, 'forms>,
        number: usize,
        partial: &PartialLayout,
    ) -> Offer<'run, 'forms> {
        Offer {
            task,
            carries_on: number,
            laid: partial.laid,
            wasted: partial.wasted,
            wasted_valleys: 0,
            narrowest: task.narrowest(&partial.left),
        }
    }

    /// Offers the lowest valleys to all the pieces left. The skyline that is `tried` is only lent for
    /// its memory.
    ///
    /// Every layout can be laid from its lowest valley on: where no piece lies in it, it is wasted up to
    /// the lower of its sides, and then another is the lowest. So there is no need to offer all of them, as
    /// long as the lowest may also be given up. That is dear, and more so each time: valleys in which no
    /// piece fits are given up until what may be wasted is, and of those in which one does only the first.
    pub(super) fn make(
        mut self,
        partial: &PartialLayout,
        tried: &mut Skyline,
        choices: &mut Choices,
        steps: &mut Steps,
    ) {
        tried.clone_from(&partial.skyline);
        let mut offered = 0;
        while let Some(valley) = tried.lowest() {
            steps.spend(self.task.forms.len());
            let is_used = self.offer_valley(&valley, &partial.left, choices);
            offered = usize::from(is_used).saturating_add(offered);
            if valley.is_flat() || offered >= VALLEYS_OFFERED {
                return;
            }
            self.wasted = self.wasted.saturating_add(valley.lost());
            if self.wasted > self.task.spare {
                return;
            }
            tried.fill(&valley);
            self.wasted_valleys = self.wasted_valleys.saturating_add(1);
        }
    }

    /// Offers one valley to all the pieces left; whether any may lie there.
    fn offer_valley(&self, valley: &Valley, left: &[u32], choices: &mut Choices) -> bool {
        let mut is_used = false;
        let room = valley.width() - self.task.cloth.gap;
        // Forms come by their width: after the first that is too wide all are.
        for (number, ((form, _), left)) in self.task.forms.iter().zip(left).enumerate() {
            if form.width > room {
                break;
            }
            if *left == 0 {
                continue;
            }
            for grid in form.grids.iter() {
                if let Some(choice) = self.choice((number, form), grid, valley) {
                    is_used = true;
                    choices.add(choice);
                }
            }
        }
        is_used
    }

    /// A form laid in a valley; `None` where it has no room, or more than may be wasted is.
    fn choice(
        &self,
        (number, form): (usize, &Form),
        grid: Grid,
        valley: &Valley,
    ) -> Option<Choice> {
        let (width, length) = self.task.with_gap(form);
        let across = place_across(grid, valley, width)?;
        let along = self.past_flaws(form, grid, (across, valley.used));
        if along + form.length > self.task.end {
            return None;
        }
        // What the print or a flaw leaves free under the piece nothing can reach any more.
        let wasted = self
            .wasted
            .saturating_add(square(width, along - valley.used))
            .saturating_add(self.lost_beside(valley, across, width, along + length));
        if wasted > self.task.spare {
            return None;
        }
        let laid = self.laid.saturating_add(square(width, length));
        let wall = if across == valley.from {
            valley.left
        } else {
            valley.right
        };
        Some(Choice {
            rank: self.task.rank(wasted, laid, wall == along + length),
            carries_on: self.carries_on,
            wasted_valleys: self.wasted_valleys,
            form: number,
            across,
            along,
        })
    }

    /// Where a form may lie in a column, from a place along the bolt on.
    fn past_flaws(&self, form: &Form, grid: Grid, (across, from): (Length, Length)) -> Length {
        let space = |along| Space {
            near: Place { across, along },
            far: Place {
                across: across + form.width,
                along: along + form.length,
            },
        };
        let first_from = |from| grid.along.at_or_after(from);
        self.task.cloth.past_flaws(0, from, first_from, space)
    }

    /// What is lost in the valley beside a piece, where nothing is narrow enough to lie there.
    ///
    /// It would be found out a piece later, when the rest is the lowest valley. Counted now, a piece that
    /// leaves a strip no other can use ranks behind one that does not, while the choice is still open.
    fn lost_beside(&self, valley: &Valley, across: Length, width: Length, end: Length) -> Square {
        let rest = valley.width() - width;
        if rest >= self.narrowest {
            return 0;
        }
        let wall = if across == valley.from {
            valley.right
        } else {
            valley.left
        };
        square(rest, wall.min(end) - valley.used)
    }
}

/// Where a piece lies in a valley: against the higher side, unless the print holds it elsewhere.
///
/// In the middle it would leave a strip on either hand; against one side it leaves one, the wider. The
/// higher side hides more of the piece, so the skyline gets less rugged.
fn place_across(grid: Grid, valley: &Valley, width: Length) -> Option<Length> {
    let across = if grid.across.are_anywhere() && valley.right > valley.left {
        valley.to - width
    } else {
        grid.across.at_or_after(valley.from)
    };
    (valley.from <= across && across + width <= valley.to).then_some(across)
}
