//! Folds that stick out past a side edge from behind.

use std::collections::BTreeSet;

use pelmet_measure::Length;
use pelmet_model::{Folding, PleatMatter, Pleating, StretchMade};

use super::worst::{pleat_of_crease, worst_of_each};
use crate::pleat::halves::Halves;
use crate::rounding::ROUNDING;

/// A pleat laid nearer to the side edge than it is deep has an underfold longer than the cloth that
/// should cover it. Of a mirrored rule only the edge it describes is looked at. An underfold as long
/// as that cloth ends half a turn beyond it, which is no more than its own bend.
pub(super) fn find(
    halves: Halves,
    pleating: &Pleating,
    folding: &Folding,
    named: &BTreeSet<usize>,
) -> impl Iterator<Item = PleatMatter> {
    let left = (halves != Halves::RightMirrored).then(|| {
        let at = folding.leftmost;
        (
            -at,
            crease_at(folding, |stretch| stretch.span().0 == at, at),
        )
    });
    let right = (halves != Halves::LeftMirrored).then(|| {
        let at = folding.rightmost;
        (
            at - folding.finished,
            crease_at(folding, |stretch| stretch.span().1 == at, at),
        )
    });
    let over = left.into_iter().chain(right);
    let over = over.filter_map(|(amount, crease)| {
        let pleat = pleat_of_crease(pleating, crease?)?;
        let beyond_bend = amount - pleat.turn.divided(2);
        (beyond_bend > ROUNDING).then_some((pleat.step, amount, ()))
    });
    let cases: Vec<_> = over.filter(|(step, _, ())| !named.contains(step)).collect();
    worst_of_each(cases).map(|(step, amount, ())| PleatMatter::FoldOverrunsEdge { step, amount })
}

/// The flat position of the crease at an extreme finished position.
fn crease_at(
    folding: &Folding,
    reaches: impl Fn(&&StretchMade) -> bool,
    finished: Length,
) -> Option<Length> {
    let stretch = folding.stretches.iter().find(reaches)?;
    let at_start = stretch.finished_from == finished;
    Some(if at_start {
        stretch.flat_from
    } else {
        stretch.flat_to
    })
}
