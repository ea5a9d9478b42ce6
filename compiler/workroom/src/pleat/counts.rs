//! How often the repeats of a rule may be made.

use pelmet_model::{MAXIMUM_PLEATS, PleatStep, Ranged, StepKind};

use super::limits::COUNTS_TRIED;
use super::piece::Piece;
use super::reach::Reach;
use super::solve::Wanted;
use super::strip::{Steps, written};

/// One count for each repeat, in the order written.
pub(super) type Counts = Vec<u32>;

/// Every choice of counts worth trying, those with fewer turns in all before those with more, up
/// to the number that is tried. The first is the least the rule allows. What is already beyond what
/// is wanted is not raised further.
pub(super) fn choices(steps: &Steps, wanted: &Wanted) -> Vec<Counts> {
    let mut ranges = Vec::new();
    add_ranges(&steps.all, &mut ranges);
    let limit = COUNTS_TRIED.checked_div(ranges.len()).unwrap_or(1).max(1);
    let least = ranges.iter().map(|range| range.least).collect();
    // A choice is made from another by one turn more, of a repeat no earlier than the one raised
    // last; so each is made once, and in order of turns.
    let mut choices: Vec<(Counts, usize)> = vec![(least, 0)];
    let mut from = 0;
    while let Some((counts, raised)) = choices.get(from).filter(|_| choices.len() < limit).cloned()
    {
        if !Reach::is_beyond(&written_for(steps, &counts), wanted) {
            let raise = |index| Some((raise(&counts, index, &ranges)?, index));
            choices.extend((raised..ranges.len()).filter_map(raise));
        }
        from = from.saturating_add(1);
    }
    choices.truncate(limit);
    choices.into_iter().map(|(counts, _)| counts).collect()
}

/// The steps with their counts settled.
pub(super) fn settled(steps: &Steps, counts: &[u32]) -> Vec<PleatStep> {
    let mut steps = steps.all.clone();
    settle(&mut steps, &mut counts.iter());
    steps
}

/// The pieces that stand for the steps with their counts settled.
pub(super) fn written_for(steps: &Steps, counts: &[u32]) -> Vec<Piece> {
    written(&settled(steps, counts), steps.turn)
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
