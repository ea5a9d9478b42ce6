//! Stacks thicker than the rule intends.

use std::cmp::Reverse;
use std::collections::BTreeSet;

use pelmet_measure::Length;

use super::{pleat_of_crease, worst_of_each};
use crate::pleating::ROUNDING;
use crate::{Folding, LayerRun, Pleat, PleatMatter, PleatRule, Pleating, Stretch};

/// Looks for runs of finished positions with too many layers, leaving out what lies under a pleat
/// already reported. Neighbouring runs are one stack; of the stacks whose deepest fold is of the
/// same step the thickest is reported.
pub(super) fn find(
    rule: &PleatRule,
    pleating: &Pleating,
    folding: &Folding,
    named: &BTreeSet<usize>,
) -> Vec<PleatMatter> {
    let intended = rule.layers.unwrap_or(PLAIN_PLEAT_LAYERS);
    let is_new = |pleat: &Pleat| !named.contains(&pleat.step);
    let too_thick = |run: &&LayerRun| {
        run.layers > intended
            && (named.is_empty()
                || folds_over(pleating, folding, run).all(|(_, pleat)| is_new(pleat)))
    };
    let thick: Vec<&LayerRun> = folding.layers.iter().filter(too_thick).collect();
    let stacks = thick.chunk_by(|one, next| one.to == next.from);
    let cases = stacks.filter_map(|stack| {
        let (from, to) = (stack.first()?.from, stack.last()?.to);
        let wide = stack.iter().filter(|run| run.to - run.from > ROUNDING);
        let thickest = wide.min_by_key(|run| Reverse(run.layers))?;
        let (_, pleat) =
            folds_over(pleating, folding, thickest).min_by_key(|(stretch, _)| stretch.height)?;
        Some((pleat.step, thickest.layers, (from, to)))
    });
    worst_of_each(cases)
        .map(|case| fold_on_fold(case, intended))
        .collect()
}

/// The layers of a plain pleat: the cloth in front, the fold, and the cloth behind.
const PLAIN_PLEAT_LAYERS: u32 = 3;

fn fold_on_fold(
    (step, layers, (from, to)): (usize, u32, (Length, Length)),
    intended: u32,
) -> PleatMatter {
    PleatMatter::FoldOnFold {
        step,
        layers,
        intended,
        from,
        to,
    }
}

/// The turned-over stretches that lie over a whole run, with their pleats.
fn folds_over<'made>(
    pleating: &'made Pleating,
    folding: &'made Folding,
    run: &LayerRun,
) -> impl Iterator<Item = (&'made Stretch, &'made Pleat)> {
    let (from, to) = (run.from, run.to);
    let over = folding.stretches.iter().filter(move |stretch| {
        let (left, right) = stretch.span();
        !stretch.face_up && left <= from && to <= right
    });
    over.filter_map(|stretch| Some((stretch, pleat_of_crease(pleating, stretch.flat_from)?)))
}
