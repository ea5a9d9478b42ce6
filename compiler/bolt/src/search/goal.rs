//! What the search is after.

use pelmet_measure::Length;

use super::form::Laid;
use crate::Cloth;
use crate::layout::{bought, bought_at_least};

/// The least saving asked for, as a part of the length.
const LEAST_SAVING: u32 = 1_000;

/// The cloth, and when a layout is good enough.
pub(super) struct Goal<'cloth> {
    pub cloth: &'cloth Cloth,
    /// No layout is shorter than this.
    pub at_least: Length,
}

/// What makes one layout worse than another: what it buys, then what it uses, then how far its
/// pieces lie from the start of the bolts.
#[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub(super) struct Cost {
    /// What it buys, of all bolts together.
    pub bought: Length,
    exact: Length,
    spread: Length,
    /// The longest length used of one bolt.
    pub longest_bolt: Length,
}

impl Cost {
    /// More than anything costs.
    pub(super) const MOST: Cost = {
        let most = Length::from_nanometres(i64::MAX);
        Cost {
            bought: most,
            exact: most,
            spread: most,
            longest_bolt: most,
        }
    };
}

impl Goal<'_> {
    /// What a layout costs.
    pub(super) fn cost(&self, laid: &[Laid<'_>]) -> Cost {
        let ends = ends_of_bolts(laid);
        Cost {
            bought: ends.iter().map(|end| bought(self.cloth, *end)).sum(),
            exact: ends.iter().copied().sum(),
            spread: laid.iter().map(Laid::end).sum(),
            longest_bolt: longest(&ends),
        }
    }

    /// The longest length used of one bolt.
    pub(super) fn end_of(&self, laid: &[Laid<'_>]) -> Length {
        longest(&ends_of_bolts(laid))
    }

    /// A length to ask for next, under `end`: one that buys less and saves `times` the least
    /// saving, but none that no layout has. `None` where there is nothing to ask for.
    pub(super) fn shorter(&self, end: Length, times: u32) -> Option<Length> {
        let shorter = self.less(end, times).max(self.at_least);
        (shorter < end).then_some(shorter)
    }

    /// A length that buys less than `end` does and saves `times` the least saving.
    pub(super) fn less(&self, end: Length, times: u32) -> Length {
        let buys_less = end.round_up_to(self.cloth.buying_step) - self.cloth.buying_step;
        let saves = end.divided(LEAST_SAVING) * i64::from(times);
        buys_less.min(end - saves).max(Length::ZERO)
    }

    /// What is bought of a bolt to use so much of it.
    pub(super) fn bought(&self, end: Length) -> Length {
        bought(self.cloth, end)
    }

    /// A length to ask for next that is longer than `too_short` and saves something: the bound, or
    /// else half-way. `None` where the two are too near each other.
    pub(super) fn between(&self, too_short: Length, end: Length) -> Option<Length> {
        let step = self.cloth.buying_step;
        let buys_less = end.round_up_to(step) - step;
        let most = buys_less.min(end - end.divided(LEAST_SAVING));
        let bound = self.at_least.round_up_to(step);
        if too_short < bound {
            return (bound <= most).then_some(bound);
        }
        let half_way = (too_short + (end - too_short).divided(2)).round_up_to(step);
        (too_short < half_way && half_way <= most).then_some(half_way)
    }

    /// Whether no layout can buy less.
    pub(super) fn is_met(&self, cost: &Cost) -> bool {
        cost.bought <= bought_at_least(self.cloth, self.at_least)
    }
}

/// The length used of each bolt, by its number.
pub(super) fn ends_of_bolts(laid: &[Laid<'_>]) -> Vec<Length> {
    let mut ends = vec![Length::ZERO];
    for it in laid {
        let bolt = usize::try_from(it.bolt).unwrap_or(0);
        if ends.len() <= bolt {
            ends.resize(bolt.saturating_add(1), Length::ZERO);
        }
        if let Some(end) = ends.get_mut(bolt) {
            *end = it.end().max(*end);
        }
    }
    ends
}

fn longest(ends: &[Length]) -> Length {
    ends.iter().copied().max().unwrap_or_default()
}
