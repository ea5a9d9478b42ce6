//! Stacks thicker than the rule intends.

use std::cmp::Reverse;
use std::collections::BTreeSet;

use pelmet_measure::Length;
use pelmet_model::{Folding, LayerRun, PleatMade, PleatMatter, PleatRule, Pleating, StretchMade};

use super::worst::{pleat_of_crease, worst_of_each};
use crate::pleat::rule::intended_layers;
use crate::rounding::ROUNDING;

/// Looks for runs of finished positions with too many layers, leaving out what lies under a pleat
/// already reported. Neighbouring runs are one stack; of the stacks whose deepest fold is of the
/// same step the thickest is reported.
pub(super) fn find(
    rule: &PleatRule,
    pleating: &Pleating,
    folding: &Folding,
    named: &BTreeSet<usize>,
) -> Vec<PleatMatter> {
    let intended = intended_layers(rule);
    let reported = named_folds(pleating, folding, named);
    let is_reported = |run: &LayerRun| {
        reported
            .iter()
            .any(|(left, right)| *left <= run.from && run.to <= *right)
    };
    let too_thick = |run: &&LayerRun| run.layers > intended && !is_reported(run);
    let thick: Vec<&LayerRun> = folding.layers.iter().filter(too_thick).collect();
    let stacks = thick.chunk_by(|one, next| one.to == next.from);
    let cases = stacks.filter_map(|stack| {
        let (from, to) = (stack.first()?.from, stack.last()?.to);
        let wide = stack.iter().filter(|run| run.to - run.from > ROUNDING);
        let thickest = wide.min_by_key(|run| Reverse(run.layers))?;
        let pleat = deepest_fold(pleating, folding, thickest)?;
        Some((pleat.step, (thickest.layers, !pleat.mirrored), (from, to)))
    });
    worst_of_each(cases)
        .map(|(step, (layers, _), (from, to))| PleatMatter::FoldOnFold {
            step,
            layers,
            intended,
            from,
            to,
        })
        .collect()
}

/// The spans of the folds of steps already reported.
fn named_folds(
    pleating: &Pleating,
    folding: &Folding,
    named: &BTreeSet<usize>,
) -> Vec<(Length, Length)> {
    let is_named = |stretch: &&StretchMade| {
        let pleat = pleat_of_crease(pleating, stretch.flat_from);
        pleat.is_some_and(|pleat| named.contains(&pleat.step))
    };
    turned_over(folding)
        .filter(is_named)
        .map(StretchMade::span)
        .collect()
}

/// The pleat of the lowest turned-over stretch at the left end of a run.
fn deepest_fold<'made>(
    pleating: &'made Pleating,
    folding: &Folding,
    run: &LayerRun,
) -> Option<&'made PleatMade> {
    let over = turned_over(folding).filter(|stretch| {
        let (left, right) = stretch.span();
        left <= run.from && run.from < right
    });
    let deepest = over.min_by_key(|stretch| stretch.height)?;
    pleat_of_crease(pleating, deepest.flat_from)
}

fn turned_over(folding: &Folding) -> impl Iterator<Item = &StretchMade> {
    folding.stretches.iter().filter(|stretch| !stretch.face_up)
}
