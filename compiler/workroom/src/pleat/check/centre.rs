//! Folds that pass the centre line into the other half.

use pelmet_measure::Length;
use pelmet_model::{PleatMade, PleatMatter, Pleating};

use super::worst::worst_of_each;
use crate::pleat::halves::Halves;
use crate::rounding::ROUNDING;

/// A fold of the right half lies, once pleated, as far from the centre line as on the flat cloth,
/// less what is taken up on the way. It crosses when that is less than nothing.
pub(super) fn find(
    halves: Halves,
    pleating: &Pleating,
    settled: impl Fn(&PleatMade) -> bool,
) -> impl Iterator<Item = PleatMatter> {
    let is_right = |pleat: &&PleatMade| halves.is_right(pleat.mirrored);
    let left = pleating.pleats.iter().filter(|pleat| !is_right(pleat));
    let left_take_up: Length = left
        .map(|pleat| pleat.take_up + pleat.lost_in_turns())
        .sum();
    let centre = pleating.flat - halves.part(pleating.flat);
    let finished_centre = centre - left_take_up;
    let right = pleating
        .pleats
        .iter()
        .filter(is_right)
        .filter(|pleat| settled(pleat));
    let folds = right.flat_map(|pleat| pleat.folds.iter().map(|fold| (pleat.step, fold)));
    let cases: Vec<_> = folds
        .map(|(step, fold)| (step, finished_centre - fold.finished, fold.crease - centre))
        .filter(|(_, amount, _)| *amount > ROUNDING)
        .collect();
    worst_of_each(cases).map(|(step, amount, fold_at)| PleatMatter::FoldCrossesCentre {
        step,
        amount,
        fold_at,
        taken_up: fold_at + amount,
    })
}
