//! How often the repeats of a rule may be made.

use pelmet_measure::Length;

use super::piece::{Measure, each_written};
use super::{COUNTS_TRIED, MAXIMUM_PLEATS};
use crate::{PleatStep, Ranged, StepKind};

/// One count for each repeat, in the order written.
pub(super) type Counts = Vec<u32>;

/// What a rule comes to for given counts, before its lengths are settled.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub(super) struct Reach {
    /// Pleats of the part described.
    pub(super) pleats: i64,
    /// Pleats and pieces of plain cloth.
    pub(super) pieces: i64,
    /// The smallest sum its ranges allow.
    pub(super) least: Length,
    /// The largest sum its ranges allow; `None` where plain cloth takes whatever is left.
    pub(super) most: Option<Length>,
}

impl Reach {
    pub(super) fn of(steps: &[PleatStep], measure: Measure) -> Self {
        let mut reach = Self {
            pleats: 0,
            pieces: 0,
            least: Length::ZERO,
            most: Some(Length::ZERO),
        };
        each_written(steps, 1, &mut |piece, times| {
            reach.pieces = reach.pieces.saturating_add(times);
            if piece.is_pleat() {
                reach.pleats = reach.pleats.saturating_add(times);
            }
            if piece.is_rest() && measure != Measure::TakeUp {
                reach.most = None;
            }
            for value in piece.values() {
                let weight = value.weight(measure).saturating_mul(times);
                let (one, other) = (value.range.least * weight, value.range.most * weight);
                reach.least += one.min(other);
                reach.most = reach.most.map(|most| most + one.max(other));
            }
        });
        reach
    }

    /// Whether a sum lies in reach, give or take `by`.
    pub(super) fn holds(&self, sum: Length, by: Length) -> bool {
        self.least <= sum + by && self.most.is_none_or(|most| sum <= most + by)
    }
}

/// Every choice of counts, those with fewer turns in all before those with more, up to the number
/// that is tried. The first is the least the rule allows.
pub(super) fn choices(steps: &[PleatStep]) -> Vec<Counts> {
    let mut ranges = Vec::new();
    add_ranges(steps, &mut ranges);
    let limit = COUNTS_TRIED.checked_div(ranges.len()).unwrap_or(1).max(1);
    let least = ranges.iter().map(|range| range.least).collect();
    // A choice is made from another by one turn more, of a repeat no earlier than the one raised
    // last; so each is made once, and in order of turns.
    let mut choices: Vec<(Counts, usize)> = vec![(least, 0)];
    let mut from = 0;
    while let Some((counts, raised)) = choices.get(from).filter(|_| choices.len() < limit).cloned()
    {
        for index in raised..ranges.len() {
            choices.extend(raise(&counts, index, &ranges).map(|counts| (counts, index)));
        }
        from = from.saturating_add(1);
    }
    choices.truncate(limit);
    choices.into_iter().map(|(counts, _)| counts).collect()
}

/// The steps with their counts settled.
pub(super) fn settled(steps: &[PleatStep], counts: &[u32]) -> Vec<PleatStep> {
    let mut steps = steps.to_vec();
    settle(&mut steps, &mut counts.iter());
    steps
}

fn raise(counts: &[u32], index: usize, ranges: &[Ranged<u32>]) -> Option<Counts> {
    let range = ranges.get(index)?;
    let mut raised = counts.to_vec();
    let count = raised.get_mut(index)?;
    *count = count.checked_add(1)?;
    let most = range.most.min(range.least.saturating_add(MAXIMUM_PLEATS));
    (*count <= most).then_some(raised)
}

fn add_ranges(steps: &[PleatStep], ranges: &mut Vec<Ranged<u32>>) {
    for step in steps {
        if let StepKind::Repeat { count, steps } = &step.kind {
            ranges.push(*count);
            add_ranges(steps, ranges);
        }
    }
}

fn settle(steps: &mut [PleatStep], counts: &mut std::slice::Iter<'_, u32>) {
    for step in steps {
        if let StepKind::Repeat { count, steps } = &mut step.kind {
            if let Some(settled) = counts.next() {
                *count = Ranged::fixed(*settled);
            }
            settle(steps, counts);
        }
    }
}
