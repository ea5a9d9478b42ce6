//! Search for a layout of a given length, piece by piece from the start of the bolt.
//!
//! Pieces are laid behind the front, always in the stretch that is used least. Of all beginnings
//! with as many pieces only those that waste least are carried on: a beam search (B. T. Lowerre,
//! "The Harpy speech recognition system", 1976) on what packing calls a skyline.

use std::collections::BTreeSet;

use pelmet_measure::Length;

use super::beginning::{Beginning, Square, square};
use super::form::{Form, Laid};
use super::front::Valley;
use crate::Cloth;
use crate::effort::Steps;
use crate::print::Grid;
use crate::space::{Place, Space};

/// So many valleys, one after another, are offered to the next piece; to reach the later ones the
/// earlier ones are wasted.
const VALLEYS_OFFERED: usize = 2;

/// So many choices are looked at for each beginning that is carried on: some lead to the same.
const CHOICES_FOR_EACH: usize = 4;

/// What it takes to carry a beginning on, in steps, beside its forms.
const STEPS_TO_CARRY_ON: usize = 20;

/// Looks for a layout on one bolt with nothing beyond `end`, carrying on up to `width` beginnings.
/// `None` where there is none among them, or the steps run out.
pub(super) fn laid_within<'forms>(
    cloth: &Cloth,
    forms: &[(&'forms Form, u32)],
    end: Length,
    width: usize,
    steps: &mut Steps,
) -> Option<Vec<Laid<'forms>>> {
    let mut beam = Beam::new(cloth, forms, end)?;
    for _ in 0..forms.iter().map(|(_, count)| u64::from(*count)).sum() {
        beam.lay_one_more(width, steps)?;
    }
    Some(beam.first())
}

/// A piece laid after another.
struct Step {
    before: Option<usize>,
    form: usize,
    place: Place,
}

/// A piece that might be laid next. The one that sorts first is the best.
#[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord)]
struct Choice {
    rank: u64,
    beginning: usize,
    /// How many valleys are wasted before it.
    wasted_valleys: usize,
    form: usize,
    across: Length,
    along: Length,
}

/// All beginnings that are carried on together.
struct Beam<'run, 'forms> {
    cloth: &'run Cloth,
    forms: &'run [(&'forms Form, u32)],
    end: Length,
    /// How much cloth may be wasted.
    spare: Square,
    /// How many bits of a square are left out where beginnings are compared.
    coarseness: u32,
    beginnings: Vec<Beginning>,
    history: Vec<Step>,
}

impl<'run, 'forms> Beam<'run, 'forms> {
    fn new(
        cloth: &'run Cloth,
        forms: &'run [(&'forms Form, u32)],
        end: Length,
    ) -> Option<Beam<'run, 'forms>> {
        let (width, length) = (cloth.usable_width + cloth.gap, end + cloth.gap);
        let of_all = |(form, count): &(&Form, u32)| {
            square(form.width + cloth.gap, form.length + cloth.gap).saturating_mul((*count).into())
        };
        let taken = forms.iter().map(of_all).fold(0, Square::saturating_add);
        let left = forms.iter().map(|(_, count)| *count).collect();
        Some(Beam {
            cloth,
            forms,
            end,
            spare: square(width, length).checked_sub(taken)?,
            coarseness: coarseness(square(width, length)),
            beginnings: vec![Beginning::new(width, left)],
            history: Vec::new(),
        })
    }

    /// Carries on the best beginnings, each with one more piece.
    fn lay_one_more(&mut self, width: usize, steps: &mut Steps) -> Option<()> {
        let mut choices = Vec::new();
        for (number, beginning) in self.beginnings.iter().enumerate() {
            self.offer(number, beginning, &mut choices, steps);
            if steps.are_spent() {
                return None;
            }
        }
        let looked_at = width.saturating_mul(CHOICES_FOR_EACH);
        if looked_at < choices.len() {
            choices.select_nth_unstable(looked_at);
            choices.truncate(looked_at);
        }
        choices.sort_unstable();
        let mut met = BTreeSet::new();
        let mut next = Vec::with_capacity(width.min(choices.len()));
        for choice in &choices {
            if next.len() >= width {
                break;
            }
            steps.spend(STEPS_TO_CARRY_ON);
            if let Some(beginning) = self.carried_on(choice)
                && met.insert(beginning.fingerprint())
            {
                next.push(beginning);
            }
        }
        self.beginnings = next;
        (!self.beginnings.is_empty()).then_some(())
    }

    /// Offers the lowest valleys of a beginning to all the pieces left.
    fn offer(
        &self,
        number: usize,
        beginning: &Beginning,
        choices: &mut Vec<Choice>,
        steps: &mut Steps,
    ) {
        let mut tried = beginning.clone();
        let narrowest = self.narrowest(&tried.left);
        let (mut offered, mut wasted_valleys) = (0, 0);
        while let Some(valley) = tried.front.lowest() {
            steps.spend(self.forms.len());
            let before = choices.len();
            for (form, _) in (0..).zip(&tried.left).filter(|(_, left)| **left > 0) {
                let offer = Offer {
                    beginning: &tried,
                    valley,
                    narrowest,
                };
                choices.extend(self.choices(form, &offer).map(|choice| Choice {
                    beginning: number,
                    wasted_valleys,
                    ..choice
                }));
            }
            offered = choices
                .len()
                .saturating_sub(before)
                .min(1)
                .saturating_add(offered);
            if valley.is_flat() || offered >= VALLEYS_OFFERED || tried.wasted > self.spare {
                return;
            }
            tried.waste(&valley);
            wasted_valleys = wasted_valleys.saturating_add(1);
        }
    }

    /// Where one form may lie in a valley.
    fn choices(&self, number: usize, offer: &Offer<'_>) -> impl Iterator<Item = Choice> {
        let form = self.forms.get(number).map(|(form, _)| *form);
        form.into_iter().flat_map(move |form| {
            let in_grid = move |grid| self.choice(number, form, grid, offer);
            form.grids.iter().filter_map(in_grid)
        })
    }

    fn choice(&self, number: usize, form: &Form, grid: Grid, offer: &Offer<'_>) -> Option<Choice> {
        let Offer {
            beginning, valley, ..
        } = offer;
        let (width, length) = self.with_gap(form);
        let across = place_across(grid, valley, width)?;
        let along = self.past_flaws(form, grid, (across, valley.used));
        let wasted = beginning
            .wasted
            .saturating_add(square(width, along - valley.used))
            .saturating_add(offer.lost_beside(across, width, along + length));
        if along + form.length > self.end || wasted > self.spare {
            return None;
        }
        let laid = beginning.laid.saturating_add(square(width, length));
        let wall = if across == valley.from {
            valley.left
        } else {
            valley.right
        };
        Some(Choice {
            rank: self.rank(wasted, laid, wall == along + length),
            beginning: 0,
            wasted_valleys: 0,
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
        let mut along = grid.along.at_or_after(from);
        while let Some(end) = self.cloth.end_of_flaw_under(0, &space(along)) {
            along = grid.along.at_or_after(end);
        }
        along
    }

    /// How bad a beginning is: the part of its cloth that it wastes. A little is added to what is
    /// wasted, so that large pieces are laid first even where nothing is; a piece that ends level
    /// with what is beside it makes the front simpler.
    fn rank(&self, wasted: Square, laid: Square, is_level: bool) -> u64 {
        let coarse = |square: Square| u64::try_from(square >> self.coarseness).unwrap_or(u64::MAX);
        let wasted = coarse(wasted.saturating_add(self.spare / 20));
        let weighed = wasted.saturating_mul(if is_level { 10 } else { 11 } << 16);
        weighed.checked_div(coarse(laid)).unwrap_or(u64::MAX)
    }

    /// The width of the narrowest form left.
    fn narrowest(&self, left: &[u32]) -> Length {
        let forms = self.forms.iter().zip(left).filter(|(_, left)| **left > 0);
        let width = |((form, _), _): (&(&Form, u32), &u32)| form.width + self.cloth.gap;
        forms.map(width).min().unwrap_or_default()
    }

    /// A form's width and length with the gap beyond it.
    fn with_gap(&self, form: &Form) -> (Length, Length) {
        (form.width + self.cloth.gap, form.length + self.cloth.gap)
    }

    /// The beginning of a choice with its piece laid; `None` where too much is wasted then.
    fn carried_on(&mut self, choice: &Choice) -> Option<Beginning> {
        let mut next = self.beginnings.get(choice.beginning)?.clone();
        for _ in 0..choice.wasted_valleys {
            let valley = next.front.lowest()?;
            next.waste(&valley);
        }
        let (form, _) = self.forms.get(choice.form)?;
        let (width, length) = self.with_gap(form);
        let valley = next.front.lowest()?;
        let hole = square(width, choice.along - valley.used);
        next.wasted = next.wasted.saturating_add(hole);
        next.laid = next.laid.saturating_add(square(width, length));
        let (from, to) = (choice.across, choice.across + width);
        next.front.use_up(&valley, from, to, choice.along + length);
        let left = next.left.get_mut(choice.form)?;
        *left = left.saturating_sub(1);
        next.waste_narrower_than(self.narrowest(&next.left));
        if next.wasted > self.spare {
            return None;
        }
        let place = Place {
            across: choice.across,
            along: choice.along,
        };
        let step = Step {
            before: next.last.replace(self.history.len()),
            form: choice.form,
            place,
        };
        self.history.push(step);
        Some(next)
    }

    /// The first of the beginnings, once it is a whole layout.
    fn first(&self) -> Vec<Laid<'forms>> {
        let last = self.beginnings.first().and_then(|first| first.last);
        let steps = std::iter::successors(self.step(last), |step| self.step(step.before));
        let laid = |step: &Step| {
            let (form, _) = self.forms.get(step.form)?;
            Some(Laid {
                form,
                bolt: 0,
                place: step.place,
                turned: false,
            })
        };
        steps.filter_map(laid).collect()
    }

    fn step(&self, number: Option<usize>) -> Option<&Step> {
        self.history.get(number?)
    }
}

/// A valley that is offered to the pieces left.
struct Offer<'run> {
    beginning: &'run Beginning,
    valley: Valley,
    narrowest: Length,
}

impl Offer<'_> {
    /// What is lost in the valley beside a piece, where nothing is narrow enough to lie there.
    fn lost_beside(&self, across: Length, width: Length, end: Length) -> Square {
        let valley = &self.valley;
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
fn place_across(grid: Grid, valley: &Valley, width: Length) -> Option<Length> {
    let is_free = !grid.across.period.is_positive();
    let across = if is_free && valley.right > valley.left {
        valley.to - width
    } else {
        grid.across.at_or_after(valley.from)
    };
    (valley.from <= across && across + width <= valley.to).then_some(across)
}

/// How many bits must be left out of squares up to this one for a rank to have room in 64 bits.
fn coarseness(square: Square) -> u32 {
    const ROOM: u32 = 42;
    Square::BITS
        .saturating_sub(square.leading_zeros())
        .saturating_sub(ROOM)
}
