//! Side edges covered by a fold in front of them.

use pelmet_model::{PleatMade, PleatMatter, Pleating};

use super::worst::worst_of_each;
use crate::rounding::ROUNDING;

/// A visible fold brought past the side edge lies over it.
pub(super) fn find(
    pleating: &Pleating,
    settled: impl Fn(&PleatMade) -> bool,
) -> impl Iterator<Item = PleatMatter> {
    let pleats = pleating
        .pleats
        .iter()
        .filter(|pleat| !pleat.mirrored && settled(pleat));
    let folds = pleats.flat_map(|pleat| pleat.folds.iter().map(|fold| (pleat.step, fold)));
    let cases: Vec<_> = folds
        .map(|(step, fold)| {
            let left = (-fold.finished, fold.crease);
            let right = (
                fold.finished - pleating.finished,
                pleating.flat - fold.crease,
            );
            let (amount, fold_at) = left.max(right);
            (step, amount, fold_at)
        })
        .filter(|(_, amount, _)| *amount > ROUNDING)
        .collect();
    worst_of_each(cases).map(|(step, amount, fold_at)| PleatMatter::EdgeInsideFold {
        step,
        fold_at,
        taken_up: fold_at + amount,
    })
}
