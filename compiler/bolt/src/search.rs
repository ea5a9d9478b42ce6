//! The search for a shorter layout, in three ways that take turns, for each finds what the others miss.
//!
//! - `beam` lays pieces behind a skyline, many partial layouts at once. It sees how cloth is wasted as it
//!   goes along and is best where little may be, but knows pieces by their rectangles and one bolt alone.
//! - `orders` looks among the orders in which pieces may be laid, which costs much for each step and works
//!   everywhere.
//! - `overlaps` asks for a given length, which begins with overlaps, and takes several bolts for one
//!   (`end_to_end`). It is best at the last bit, where a few pieces have to be shifted a little.
//!
//! All try only places where a piece lies against another or on a line of the print. They spend steps,
//! not time, and their dice fall the same way every time.

mod beam;
mod dice;
mod effort;
mod end_to_end;
mod forms;
mod goal;
mod near;
mod orders;
mod overlaps;
mod steps;
mod watch;

use pelmet_measure::Length;

use self::beam::{Sought, laid_within};
use self::dice::Dice;
pub use self::effort::SearchEffort;
use self::end_to_end::EndToEnd;
use self::forms::{Form, Forms, Laid};
use self::goal::{Goal, ends_of_bolts};
use self::orders::{Way, best_fit, best_order, bottom_left};
use self::overlaps::without_overlaps;
pub(crate) use self::steps::Steps;
pub(crate) use self::watch::Watched;
pub use self::watch::{SearchProgress, SearchWatch};
use crate::given::{LayoutCloth, LayoutPiece};
use crate::layout::Placed;
use crate::places::Cut;

/// With more pieces than these the search would not come far, and shelves waste little.
const MOST_SEARCHED: usize = 2_000;

/// The part of the steps left that each round may spend.
const ROUNDS: [(u64, u64); 4] = [(1, 8), (1, 4), (1, 2), (1, 1)];

/// The ways to lay an order, and the part of the steps left of a round that each may spend.
const WAYS: [(Way, u64, u64); 2] = [(best_fit, 1, 2), (bottom_left, 1, 3)];

/// Attempts at the smallest saving that fail before a round gives it up.
const MOST_FAILURES: u32 = 2;

/// One attempt at a shorter layout may spend one of so many parts of the steps left.
const PARTS_OF_ATTEMPTS: u64 = 3;

/// So many partial layouts are carried on together at first.
const FIRST_BEAM: usize = 32;

/// So many times more are carried on toward the bound: where little may be wasted, most of them are soon
/// given up.
const TOWARD_BOUND: usize = 8;

/// So many times more are carried on next, if the steps last.
const MOST_GROWTH: u64 = 4;

/// Looks for a layout that buys less than `placed`; gives the best one found, `placed` at worst.
pub(crate) fn improved(
    cloth: &LayoutCloth,
    pieces: &[LayoutPiece],
    cuts: &[Cut],
    placed: &[Placed],
    lower_bound: Length,
    mut steps: Steps,
) -> Vec<Placed> {
    if cuts.len() > MOST_SEARCHED || steps.are_spent() {
        return placed.to_vec();
    }
    let forms = Forms::of(cloth, pieces, cuts);
    let goal = Goal { cloth, lower_bound };
    let start = forms.laid(placed);
    if start.is_empty() || goal.is_met(&goal.cost(&start)) {
        return placed.to_vec();
    }
    let mut search = Search {
        goal,
        all: forms.all(),
        dice: Dice::new(),
        best: start,
    };
    let counted = forms.counted();
    // Among shapes the beam is soon outdone by the searches that know shapes; they get the most.
    let (numerator, denominator) = if forms.are_shaped() { (1, 8) } else { (3, 4) };
    let mut part = steps.part(numerator, denominator);
    search.lay_behind_skyline(&counted, &mut part);
    steps.give_back(&part);
    for (numerator, denominator) in ROUNDS {
        let mut round = steps.part(numerator, denominator);
        search.round(&mut round);
        steps.give_back(&round);
    }
    forms.placed(&search.best)
}

/// A search under way.
struct Search<'run, 'forms> {
    goal: Goal<'run>,
    all: Vec<&'forms Form>,
    dice: Dice,
    best: Vec<Laid<'forms>>,
}

impl<'forms> Search<'_, 'forms> {
    /// Lays pieces behind a skyline, with more and more partial layouts carried on together.
    ///
    /// How wide a beam must be to find something cannot be known, so it begins narrow and grows, by as
    /// much as the steps left allow but no more than fourfold. What the narrow ones cost is a small part
    /// of what the last does, and where they find the bound the wide ones are never run.
    fn lay_behind_skyline(&mut self, forms: &[(&'forms Form, u32)], steps: &mut Steps) {
        let mut width = FIRST_BEAM;
        while !self.is_over(steps) && self.is_on_one_bolt() {
            let before = steps.count();
            if !self.halve_the_distance(forms, width, steps) {
                return;
            }
            let spent = before.saturating_sub(steps.count());
            let times = steps
                .count()
                .checked_div(spent)
                .unwrap_or(0)
                .min(MOST_GROWTH);
            let Some(times) = usize::try_from(times).ok().filter(|times| *times > 0) else {
                return;
            };
            width = width.saturating_mul(times.max(2));
        }
    }

    /// Asks for the bound, then for lengths half-way to the shortest that is not found. Gives whether
    /// more might be found among more partial layouts.
    ///
    /// That a length is not found does not say that no shorter one could be: the beam leaves out most of
    /// what there is. Halving takes it to be so, for otherwise every length would have to be asked for;
    /// the next, wider beam asks anew.
    fn halve_the_distance(
        &mut self,
        forms: &[(&'forms Form, u32)],
        width: usize,
        steps: &mut Steps,
    ) -> bool {
        let mut too_short = Length::ZERO;
        let mut were_left_out = false;
        while !self.is_over(steps)
            && let Some(end) = self.goal.between(too_short, self.goal.end_of(&self.best))
        {
            steps.spend(1);
            let times = if too_short.is_zero() { TOWARD_BOUND } else { 1 };
            let width = width.saturating_mul(times);
            match laid_within(self.goal.cloth, forms, end, width, steps) {
                Sought::Found(laid) => self.keep(laid, steps),
                Sought::InVain { left_out } => {
                    were_left_out |= left_out;
                    too_short = end;
                }
            }
        }
        were_left_out
    }

    /// Lets each search go on from the best layout so far. What is found by one is where the next
    /// begins: an order is read off a layout without overlaps, and overlaps begin from a layout that is
    /// asked to be shorter.
    fn round(&mut self, steps: &mut Steps) {
        for (way, numerator, denominator) in WAYS {
            let mut part = steps.part(numerator, denominator);
            self.reorder(way, &mut part);
            steps.give_back(&part);
        }
        self.shorten(steps);
        self.reorder(bottom_left, steps);
    }

    fn reorder(&mut self, way: Way, steps: &mut Steps) {
        if !self.is_over(steps) {
            let best = std::mem::take(&mut self.best);
            self.best = best_order(&self.goal, way, &self.all, best, &mut self.dice, steps);
        }
    }

    /// Asks for shorter and shorter layouts, and for a smaller saving when one is not found.
    ///
    /// Twice the saving is asked for after each that is found, so that a layout that is far too long is
    /// soon left behind; one step over the mark falls back to the least.
    fn shorten(&mut self, steps: &mut Steps) {
        let mut saving = 1;
        let mut failures = 0;
        while failures < MOST_FAILURES && !self.is_over(steps) {
            steps.spend(1);
            let mut attempt = steps.part(1, PARTS_OF_ATTEMPTS);
            let found = if self.is_on_one_bolt() {
                self.shorter_bolt(saving, &mut attempt)
            } else {
                self.less_of_some_bolt(saving, &mut attempt)
            };
            steps.give_back(&attempt);
            if let Some(laid) = found {
                self.keep(laid, steps);
                saving = saving.saturating_mul(2);
            } else {
                failures = failures.saturating_add(u32::from(saving == 1));
                saving = 1;
            }
        }
    }

    /// A layout that uses less of the only bolt.
    fn shorter_bolt(&mut self, saving: u32, steps: &mut Steps) -> Option<Vec<Laid<'forms>>> {
        let end = self.goal.end_of(&self.best);
        let stretch = (Length::ZERO, self.goal.shorter(end, saving)?);
        without_overlaps(
            self.goal.cloth,
            &self.best,
            &[stretch],
            &mut self.dice,
            steps,
        )
    }

    /// A layout for which less is bought of one of several bolts, the last of them tried first, and
    /// no more of the others.
    fn less_of_some_bolt(&mut self, saving: u32, steps: &mut Steps) -> Option<Vec<Laid<'forms>>> {
        let bolts = EndToEnd::of(self.goal.cloth)?;
        let ends = ends_of_bolts(&self.best);
        let joined = bolts.joined(&self.best);
        (1..=ends.len()).rev().find_map(|left| {
            let mut part = steps.part(1, u64::try_from(left).unwrap_or(1));
            let stretches = bolts.with_less_of(&self.goal, &ends, left.saturating_sub(1), saving);
            let dice = &mut self.dice;
            let found = without_overlaps(&bolts.cloth, &joined, &stretches, dice, &mut part);
            steps.give_back(&part);
            bolts.parted(found?, ends.len())
        })
    }

    fn keep(&mut self, laid: Vec<Laid<'forms>>, steps: &Steps) {
        steps.found(self.goal.cost(&laid).bought);
        self.best = laid;
    }

    fn is_over(&self, steps: &Steps) -> bool {
        steps.are_spent() || self.goal.is_met(&self.goal.cost(&self.best))
    }

    fn is_on_one_bolt(&self) -> bool {
        self.best.iter().all(|it| it.bolt == 0)
    }
}
