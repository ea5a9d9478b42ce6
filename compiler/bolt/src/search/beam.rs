//! Search for a layout of a given length, piece by piece from the start of the bolt.
//!
//! Pieces are laid behind the front, always in the stretch that is used least. Of all beginnings
//! with as many pieces only those that waste least are carried on: a beam search (B. T. Lowerre,
//! "The Harpy speech recognition system", 1976) on what packing calls a skyline.

use std::collections::BTreeSet;

use pelmet_measure::Length;

use super::beginning::Beginning;
use super::form::{Form, Laid};
use super::front::{Front, Square, Valley, square};
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
pub(super) fn laid_within<'forms>(
    cloth: &Cloth,
    forms: &[(&'forms Form, u32)],
    end: Length,
    width: usize,
    steps: &mut Steps,
) -> Sought<'forms> {
    let Some(mut beam) = Beam::new(cloth, forms, end) else {
        return Sought::InVain { left_out: false };
    };
    for _ in 0..forms.iter().map(|(_, count)| u64::from(*count)).sum() {
        if beam.lay_one_more(width, steps).is_none() {
            let left_out = beam.left_out;
            return Sought::InVain { left_out };
        }
    }
    Sought::Found(beam.first())
}

/// What came of the search.
pub(super) enum Sought<'forms> {
    /// A layout with nothing beyond the end.
    Found(Vec<Laid<'forms>>),
    /// None among the beginnings carried on, or the steps ran out.
    InVain {
        /// Whether beginnings were left out for there were too many.
        left_out: bool,
    },
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
    /// A little more than is wasted, so that large pieces are laid first even where nothing is.
    handicap: Square,
    /// How many bits of a square are left out where beginnings are compared.
    coarseness: u32,
    beginnings: Vec<Beginning>,
    /// Whether beginnings were left out for there were too many.
    left_out: bool,
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
        let spare = square(width, length).checked_sub(taken)?;
        Some(Beam {
            cloth,
            forms,
            end,
            spare,
            handicap: spare / 20,
            coarseness: coarseness(square(width, length)),
            beginnings: vec![Beginning::new(width, left)],
            left_out: false,
            history: Vec::new(),
        })
    }

    /// Carries on the best beginnings, each with one more piece.
    fn lay_one_more(&mut self, width: usize, steps: &mut Steps) -> Option<()> {
        let mut choices = Choices::of_best(width.saturating_mul(CHOICES_FOR_EACH));
        let mut tried = Front::new(Length::ZERO);
        for (number, beginning) in self.beginnings.iter().enumerate() {
            self.offer(number, beginning, &mut tried, &mut choices, steps);
            if steps.are_spent() {
                self.left_out = true;
                return None;
            }
        }
        let choices = choices.in_order();
        self.left_out |= choices.len() > width;
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

    /// Offers the lowest valleys of a beginning to all the pieces left. The front that is `tried` is
    /// only lent for its memory.
    fn offer(
        &self,
        number: usize,
        beginning: &Beginning,
        tried: &mut Front,
        choices: &mut Choices,
        steps: &mut Steps,
    ) {
        tried.clone_from(&beginning.front);
        let mut offer = Offer {
            beginning: number,
            laid: beginning.laid,
            wasted: beginning.wasted,
            wasted_valleys: 0,
            narrowest: self.narrowest(&beginning.left),
        };
        let mut offered = 0;
        while let Some(valley) = tried.lowest() {
            steps.spend(self.forms.len());
            let is_used = self.offer_valley(&offer, &valley, &beginning.left, choices);
            offered = usize::from(is_used).saturating_add(offered);
            if valley.is_flat() || offered >= VALLEYS_OFFERED {
                return;
            }
            offer.wasted = offer.wasted.saturating_add(valley.lost());
            if offer.wasted > self.spare {
                return;
            }
            tried.fill(&valley);
            offer.wasted_valleys = offer.wasted_valleys.saturating_add(1);
        }
    }

    /// Offers one valley to all the pieces left; whether any may lie there.
    fn offer_valley(
        &self,
        offer: &Offer,
        valley: &Valley,
        left: &[u32],
        choices: &mut Choices,
    ) -> bool {
        let mut is_used = false;
        let room = valley.width() - self.cloth.gap;
        // Forms come by their width.
        for (number, ((form, _), left)) in self.forms.iter().zip(left).enumerate() {
            if form.width > room {
                break;
            }
            if *left == 0 {
                continue;
            }
            for grid in form.grids.iter() {
                if let Some(choice) = self.choice((number, form), grid, offer, valley) {
                    is_used = true;
                    choices.add(choice);
                }
            }
        }
        is_used
    }

    fn choice(
        &self,
        (number, form): (usize, &Form),
        grid: Grid,
        offer: &Offer,
        valley: &Valley,
    ) -> Option<Choice> {
        let (width, length) = self.with_gap(form);
        let across = place_across(grid, valley, width)?;
        let along = self.past_flaws(form, grid, (across, valley.used));
        if along + form.length > self.end {
            return None;
        }
        let wasted = offer
            .wasted
            .saturating_add(square(width, along - valley.used))
            .saturating_add(offer.lost_beside(valley, across, width, along + length));
        if wasted > self.spare {
            return None;
        }
        let laid = offer.laid.saturating_add(square(width, length));
        let wall = if across == valley.from {
            valley.left
        } else {
            valley.right
        };
        Some(Choice {
            rank: self.rank(wasted, laid, wall == along + length),
            beginning: offer.beginning,
            wasted_valleys: offer.wasted_valleys,
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

    /// How bad a beginning is: the part of its cloth that it wastes. A piece that ends level with
    /// what is beside it makes the front simpler.
    fn rank(&self, wasted: Square, laid: Square, is_level: bool) -> u64 {
        let coarse = |square: Square| u64::try_from(square >> self.coarseness).unwrap_or(u64::MAX);
        let wasted = coarse(wasted.saturating_add(self.handicap));
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

/// The best of the choices that were added.
struct Choices {
    most: usize,
    kept: Vec<Choice>,
    /// Whatever is no better than this is not among the best.
    limit: Option<Choice>,
}

impl Choices {
    /// None yet, and in the end no more than so many.
    fn of_best(most: usize) -> Choices {
        Choices {
            most: most.max(1),
            kept: Vec::new(),
            limit: None,
        }
    }

    fn add(&mut self, choice: Choice) {
        if self.limit.is_some_and(|limit| limit <= choice) {
            return;
        }
        self.kept.push(choice);
        if self.kept.len() >= self.most.saturating_mul(2) {
            self.leave_out();
        }
    }

    /// The best, in order.
    fn in_order(mut self) -> Vec<Choice> {
        self.leave_out();
        self.kept.sort_unstable();
        self.kept
    }

    fn leave_out(&mut self) {
        if self.most < self.kept.len() {
            let (_, limit, _) = self.kept.select_nth_unstable(self.most);
            self.limit = Some(*limit);
            self.kept.truncate(self.most);
        }
    }
}

/// What is offered to the pieces left: a beginning, some of its valleys given up.
struct Offer {
    beginning: usize,
    laid: Square,
    wasted: Square,
    wasted_valleys: usize,
    narrowest: Length,
}

impl Offer {
    /// What is lost in the valley beside a piece, where nothing is narrow enough to lie there.
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
