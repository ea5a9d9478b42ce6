//! Two pleats that need the same flat cloth.

use pelmet_measure::Length;
use pelmet_model::{PleatMade, PleatMatter, Pleating};

use super::worst::worst_of_each;
use crate::pleat::halves::Halves;
use crate::rounding::ROUNDING;

/// Compares each pleat with the one before it that reaches furthest. Where the two halves of a
/// mirrored rule meet, it is the centre line that is crossed, and told so.
pub(super) fn find(halves: Halves, pleating: &Pleating) -> Vec<PleatMatter> {
    let start = halves.start(pleating.flat);
    let mut furthest: Option<&PleatMade> = None;
    let mut cases = Vec::new();
    for pleat in pleating.pleats.iter().filter(|pleat| !pleat.mirrored) {
        if let Some(before) = furthest {
            cases.push((
                (before.step, pleat.step),
                before.to - pleat.from,
                before.to - start,
            ));
        }
        if furthest.is_none_or(|before| pleat.to > before.to) {
            furthest = Some(pleat);
        }
    }
    cases.retain(|(_, amount, _)| *amount > ROUNDING);
    worst_of_each::<_, Length, _>(cases)
        .map(
            |((first, second), amount, ends)| PleatMatter::PleatsRunTogether {
                first,
                second,
                ends,
                begins: ends - amount,
            },
        )
        .collect()
}
