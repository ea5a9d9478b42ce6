//! Pleats that follow the print: the same part of it shows on every pleat.

use std::collections::BTreeMap;

use pelmet_measure::Length;
use pelmet_model::{Follow, PleatMatter, PleatRule, PleatStep, Ranged, StepKind};

use super::piece::{Measure, Piece, sum};
use crate::pleat::rule::turn;

/// The rule with the lengths that must follow a print of this period settled, each nearest to its
/// ideal.
///
/// From the middle of one pleat to the middle of the next the flat cloth comes to whole repeats.
/// Where spaces follow, the pleats keep their ideal depths; where depths follow, the spaces keep
/// theirs, and a pleat is measured with the space after it.
///
/// # Errors
///
/// A length of which no value in its range brings the print round, or pleats with nothing between
/// them to follow it.
pub(crate) fn follow_print(rule: &PleatRule, repeat: Length) -> Result<PleatRule, PleatMatter> {
    let Some(follow) = rule.print else {
        return Ok(rule.clone());
    };
    let mut laid = Vec::new();
    add_twice(&rule.steps, &mut laid);
    let mut settled = BTreeMap::new();
    for between in gaps(&laid, turn(rule)) {
        let (step, range) = between.follows(follow, repeat)?;
        settled.entry(step).or_insert(range);
    }
    let mut rule = rule.clone();
    settle(&mut rule.steps, follow, &settled);
    Ok(rule)
}

/// Every pleat that has another after it, with the plain cloth between the two.
struct Gap<'rule> {
    before: &'rule PleatStep,
    plain: &'rule [&'rule PleatStep],
    after: &'rule PleatStep,
    /// What each pressed crease loses in its turn.
    turn: Length,
}

/// The steps in working order, each repeat made twice: what follows what is then seen for every
/// step, also from one turn to the next.
fn add_twice<'rule>(steps: &'rule [PleatStep], laid: &mut Vec<&'rule PleatStep>) {
    for step in steps {
        match &step.kind {
            StepKind::Repeat { count, steps } => {
                let between = steps.iter().rev().take_while(|step| is_plain(step)).count();
                let turn = steps.len().saturating_sub(between);
                if count.most > 1 {
                    add_twice(steps, laid);
                }
                add_twice(steps.get(..turn).unwrap_or(steps), laid);
            }
            _ => laid.push(step),
        }
    }
}

fn is_plain(step: &PleatStep) -> bool {
    matches!(step.kind, StepKind::Plain(_) | StepKind::Rest)
}

fn gaps<'rule>(laid: &'rule [&'rule PleatStep], turn: Length) -> Vec<Gap<'rule>> {
    let at: Vec<usize> = (0..laid.len())
        .filter(|index| laid.get(*index).is_some_and(|step| !is_plain(step)))
        .collect();
    let pairs = at.iter().zip(at.iter().skip(1));
    pairs
        .filter_map(|(&one, &other)| {
            Some(Gap {
                before: laid.get(one)?,
                plain: laid.get(one.saturating_add(1)..other)?,
                after: laid.get(other)?,
                turn,
            })
        })
        .collect()
}

impl Gap<'_> {
    /// The step that gives way here, and the length it comes to.
    fn follows(
        &self,
        follow: Follow,
        repeat: Length,
    ) -> Result<(usize, Ranged<Length>), PleatMatter> {
        let flat = |step| flat(step, self.turn);
        let plain: Length = self.plain.iter().map(|step| flat(step)).sum();
        match (follow, self.plain, &self.before.kind) {
            (Follow::Spaces, [.., space], _) => {
                let middles = (flat(self.before) + flat(self.after)).divided(2);
                let fixed = middles + plain - flat(space);
                let range = space.range().unwrap_or(ANY);
                Ok((
                    space.number,
                    nearest(space.number, range, fixed, 1, repeat)?,
                ))
            }
            (Follow::Depths, _, StepKind::Pleat(order)) => {
                let piece = Piece::of(self.before, 1, self.turn);
                let times = piece.map_or(1, |piece| piece.depth_weight());
                let fixed = flat(self.before) - order.depth.ideal * times + plain;
                let step = self.before.number;
                Ok((step, nearest(step, order.depth, fixed, times, repeat)?))
            }
            _ => Err(PleatMatter::NothingFollowsPrint {
                step: self.after.number,
            }),
        }
    }
}

/// The flat cloth of a step at its ideals.
fn flat(step: &PleatStep, turn: Length) -> Length {
    Piece::of(step, 1, turn).map_or(Length::ZERO, |piece| sum(&[piece], Measure::Flat))
}

/// A rest between two pleats may be as wide as the print wants it.
const ANY: Ranged<Length> = Ranged {
    least: Length::ZERO,
    ideal: Length::ZERO,
    most: Length::LARGEST,
};

/// The value in the range, nearest its ideal, with which what lies there `besides` and so many times the value come
/// to whole repeats.
fn nearest(
    step: usize,
    range: Ranged<Length>,
    besides: Length,
    times: i64,
    repeat: Length,
) -> Result<Ranged<Length>, PleatMatter> {
    let parts = u32::try_from(times).unwrap_or(1).max(1);
    let value = |whole: Length| (whole - besides).divided(parts);
    let below = value((besides + range.ideal * times).round_down_to(repeat));
    let above = value((besides + range.ideal * times).round_up_to(repeat));
    let mut choices = [below, above];
    choices.sort_by_key(|choice| (*choice - range.ideal).abs());
    let allowed = |choice: &&Length| (range.least..=range.most).contains(*choice);
    let found = choices.iter().find(allowed);
    found
        .map(|found| Ranged::fixed(*found))
        .ok_or(PleatMatter::PrintOutOfReach {
            step,
            times,
            besides,
            repeat,
            below: below.is_positive().then_some(below),
            above,
        })
}

fn settle(steps: &mut [PleatStep], follow: Follow, settled: &BTreeMap<usize, Ranged<Length>>) {
    for step in steps {
        let here = settled.get(&step.number);
        match (&mut step.kind, here) {
            (StepKind::Plain(range), Some(here)) => *range = *here,
            (kind @ StepKind::Rest, Some(here)) => *kind = StepKind::Plain(*here),
            (StepKind::Pleat(order), _) => {
                let kept = matches!(follow, Follow::Spaces).then_some(order.depth.ideal);
                let kept = kept.map(Ranged::fixed);
                order.depth = here.copied().or(kept).unwrap_or(order.depth);
            }
            (StepKind::Repeat { steps, .. }, _) => settle(steps, follow, settled),
            _ => {}
        }
    }
}
