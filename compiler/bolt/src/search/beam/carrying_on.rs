//! The beam: all partial layouts that are carried on together, and how each gets one piece more.

use std::collections::BTreeSet;

use pelmet_measure::Length;

use super::choices::{Choice, Choices};
use super::offer::Offer;
use super::partial_layout::PartialLayout;
use super::skyline::{Skyline, square};
use super::task::Task;
use crate::layout::Orientation;
use crate::places::Place;
use crate::search::forms::Laid;
use crate::search::steps::Steps;

/// So many choices are looked at for each partial layout that is carried on: some lead to the same.
const CHOICES_FOR_EACH: usize = 4;

/// What it takes to carry a partial layout on, in steps, beside its forms.
const STEPS_TO_CARRY_ON: usize = 20;

/// A piece laid after another.
struct Step {
    /// The step before it, by number; `None` for the first piece.
    before: Option<usize>,
    form: usize,
    place: Place,
}

/// All partial layouts that are carried on together.
pub(super) struct Beam<'run, 'forms> {
    task: &'run Task<'run, 'forms>,
    partial: Vec<PartialLayout>,
    left_out: bool,
    /// Every piece ever laid in any of them. Partial layouts have most of their pieces in common, so
    /// each knows the last of its steps alone, and the steps know those before them.
    history: Vec<Step>,
}

impl<'run, 'forms> Beam<'run, 'forms> {
    /// One partial layout, in which nothing is laid.
    pub(super) fn new(task: &'run Task<'run, 'forms>) -> Beam<'run, 'forms> {
        let left = task.forms.iter().map(|(_, count)| *count).collect();
        let width = task.cloth.usable_width + task.cloth.gap;
        Beam {
            task,
            partial: vec![PartialLayout::new(width, left)],
            left_out: false,
            history: Vec::new(),
        }
    }

    /// Whether partial layouts were left out so far for there were too many.
    pub(super) fn left_out(&self) -> bool {
        self.left_out
    }

    /// Carries on the best `width` partial layouts, each with one more piece; `None` where there are
    /// none, or the steps ran out.
    ///
    /// Pieces laid in another order often come to lie alike: so more choices are kept than are carried
    /// on, and of those that lead to one skyline with the same pieces left only the first, which is the
    /// best, is. Without that the beam soon carries one layout many times over.
    pub(super) fn lay_one_more(&mut self, width: usize, steps: &mut Steps) -> Option<()> {
        let mut choices = Choices::of_best(width.saturating_mul(CHOICES_FOR_EACH));
        let mut tried = Skyline::new(Length::ZERO);
        for (number, partial) in self.partial.iter().enumerate() {
            Offer::of(self.task, number, partial).make(partial, &mut tried, &mut choices, steps);
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
            if let Some(partial) = self.carried_on(choice)
                && met.insert(partial.fingerprint())
            {
                next.push(partial);
            }
        }
        self.partial = next;
        (!self.partial.is_empty()).then_some(())
    }

    /// The partial layout of a choice with its piece laid; `None` where too much is wasted then.
    fn carried_on(&mut self, choice: &Choice) -> Option<PartialLayout> {
        let mut next = self.partial.get(choice.carries_on)?.clone();
        for _ in 0..choice.wasted_valleys {
            let valley = next.skyline.lowest()?;
            next.waste(&valley);
        }
        let (form, _) = self.task.forms.get(choice.form)?;
        let (width, length) = self.task.with_gap(form);
        let valley = next.skyline.lowest()?;
        let hole = square(width, choice.along - valley.used);
        next.wasted = next.wasted.saturating_add(hole);
        next.laid = next.laid.saturating_add(square(width, length));
        let (from, to) = (choice.across, choice.across + width);
        next.skyline
            .use_up(&valley, from, to, choice.along + length);
        let left = next.left.get_mut(choice.form)?;
        *left = left.saturating_sub(1);
        next.waste_narrower_than(self.task.narrowest(&next.left));
        if next.wasted > self.task.spare {
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

    /// The first of the partial layouts, once it is a whole one.
    pub(super) fn first(&self) -> Vec<Laid<'forms>> {
        let last = self.partial.first().and_then(|first| first.last);
        let steps = std::iter::successors(self.step(last), |step| self.step(step.before));
        let laid = |step: &Step| {
            let (form, _) = self.task.forms.get(step.form)?;
            Some(Laid {
                form,
                bolt: 0,
                place: step.place,
                orientation: Orientation::Upright,
            })
        };
        steps.filter_map(laid).collect()
    }

    fn step(&self, number: Option<usize>) -> Option<&Step> {
        self.history.get(number?)
    }
}
