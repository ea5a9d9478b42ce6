//! Several bolts laid end to end as one, for searches that know one bolt only.

use pelmet_measure::Length;

use super::forms::Laid;
use super::goal::Goal;
use crate::given::{BoltFlaw, LayoutCloth};

/// A stretch of bolt that pieces may use, from a place along it to another.
pub(super) type Stretch = (Length, Length);

/// Bolts end to end. Each begins whole repeats after the one before it, so that the print lies on
/// each as it does on the first; and at least a gap after that one ends, so that pieces of two bolts
/// never come near each other and need not be told apart.
///
/// The search for overlaps thus never asks which bolt a piece lies on, and a piece may move from one to
/// another as easily as along one.
pub(super) struct EndToEnd {
    /// From the start of one bolt to that of the next.
    apart: Length,
    /// All of them as one cloth without an end.
    pub cloth: LayoutCloth,
}

impl EndToEnd {
    /// The bolts of a cloth; `None` where there is one bolt without an end.
    pub(super) fn of(cloth: &LayoutCloth) -> Option<EndToEnd> {
        let repeat = cloth.repeat_along.unwrap_or_default();
        let apart = (cloth.bolt_length? + cloth.gap).round_up_to(repeat);
        let moved = |flaw: &BoltFlaw| BoltFlaw {
            bolt: 0,
            from: flaw.from + apart * i64::from(flaw.bolt),
            to: flaw.to + apart * i64::from(flaw.bolt),
            ..*flaw
        };
        let cloth = LayoutCloth {
            bolt_length: None,
            flaws: cloth.flaws.iter().map(moved).collect(),
            ..cloth.clone()
        };
        Some(EndToEnd { apart, cloth })
    }

    /// The pieces of all bolts on the one.
    pub(super) fn joined<'forms>(&self, laid: &[Laid<'forms>]) -> Vec<Laid<'forms>> {
        let mut joined = laid.to_vec();
        for it in &mut joined {
            it.place.along += self.apart * i64::from(it.bolt);
            it.bolt = 0;
        }
        joined
    }

    /// The pieces of the one on their bolts; `None` where a bolt is left without any that is not the
    /// last: a layout may pass over a bolt only for its flaws.
    pub(super) fn parted<'forms>(
        &self,
        laid: Vec<Laid<'forms>>,
        bolts: usize,
    ) -> Option<Vec<Laid<'forms>>> {
        let mut used = vec![false; bolts];
        let mut parted = laid;
        for it in &mut parted {
            let bolt = it
                .place
                .along
                .nanometres()
                .checked_div(self.apart.nanometres())?;
            it.bolt = u32::try_from(bolt).ok()?;
            it.place.along -= self.apart * bolt;
            *used.get_mut(usize::try_from(bolt).ok()?)? = true;
        }
        let unused = used.iter().rev().skip(1).any(|used| !used);
        (!unused).then_some(parted)
    }

    /// What may be used of the bolts for a layout that buys less than one that uses so much of each:
    /// as much as is bought of them now, but less of one of them. What is bought and not yet used costs
    /// nothing, so pieces may move there.
    pub(super) fn with_less_of(
        &self,
        goal: &Goal<'_>,
        ends: &[Length],
        less_of: usize,
        times: u32,
    ) -> Vec<Stretch> {
        let starts = (0..).map(|bolt| self.apart * bolt);
        let stretch = |(bolt, (start, end)): (usize, (Length, &Length))| {
            let may_use = if bolt == less_of {
                goal.less(*end, times)
            } else {
                goal.bought(*end)
            };
            (start, start + may_use)
        };
        starts.zip(ends).enumerate().map(stretch).collect()
    }
}
