//! Two pleats that need the same flat cloth.

use pelmet_measure::Length;

use super::worst_of_each;
use crate::pleating::ROUNDING;
use crate::{Pleat, PleatMatter, Pleating};

/// Compares each pleat with the one before it that reaches furthest. Where the two halves of a
/// mirrored rule meet, it is the centre line that is crossed, and told so.
pub(super) fn find(pleating: &Pleating) -> Vec<PleatMatter> {
    let mut furthest: Option<&Pleat> = None;
    let mut cases = Vec::new();
    for pleat in pleating.pleats.iter().filter(|pleat| !pleat.mirrored) {
        if let Some(before) = furthest {
            cases.push(((before.step, pleat.step), before.to - pleat.from, ()));
        }
        if furthest.is_none_or(|before| pleat.to > before.to) {
            furthest = Some(pleat);
        }
    }
    cases.retain(|(_, amount, ())| *amount > ROUNDING);
    worst_of_each::<_, Length, _>(cases)
        .map(
            |((first, second), amount, ())| PleatMatter::PleatsRunTogether {
                first,
                second,
                amount,
            },
        )
        .collect()
}
