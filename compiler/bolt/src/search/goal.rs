//! What the search is after.

use pelmet_measure::Length;

use super::forms::Laid;
use crate::given::LayoutCloth;
use crate::layout::{bought, bought_at_least};

/// The least saving asked for, as a part of the length.
const LEAST_SAVING: u32 = 1_000;

/// The cloth, and when a layout is good enough.
pub(super) struct Goal<'cloth> {
    pub cloth: &'cloth LayoutCloth,
    /// No layout is shorter than this.
    pub lower_bound: Length,
}

/// What makes one layout worse than another: what it buys, then what it uses, then how far its
/// pieces lie from the start of the bolts.
#[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub(super) struct Cost {
    /// What it buys, of all bolts together.
    pub bought: Length,
    /// What it uses, of all bolts together.
    exact: Length,
    /// Where its pieces end, added up. Nobody pays for it; but of two layouts as long, the one whose
    /// pieces lie nearer to the start leaves more free at the end, from where a shorter one comes.
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
    /// What a layout costs, to compare it with others.
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
        let shorter = self.less(end, times).max(self.lower_bound);
        (shorter < end).then_some(shorter)
    }

    /// A length that buys less than `end` does and saves `times` the least saving. A length that buys as
    /// much is not worth asking for, and one a nanometre shorter hardly another problem.
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
    ///
    /// The bound comes first because a layout as long as that ends the whole search, and because little
    /// may be wasted there: whether it can be had shows soon. All lengths are whole buying steps, for
    /// what is less than one more step costs no more.
    pub(super) fn between(&self, too_short: Length, end: Length) -> Option<Length> {
        let step = self.cloth.buying_step;
        let buys_less = end.round_up_to(step) - step;
        let most = buys_less.min(end - end.divided(LEAST_SAVING));
        let bound = self.lower_bound.round_up_to(step);
        if too_short < bound {
            return (bound <= most).then_some(bound);
        }
        let half_way = (too_short + (end - too_short).divided(2)).round_up_to(step);
        (too_short < half_way && half_way <= most).then_some(half_way)
    }

    /// Whether no layout can buy less than one with this cost.
    pub(super) fn is_met(&self, cost: &Cost) -> bool {
        cost.bought <= bought_at_least(self.cloth, self.lower_bound)
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
