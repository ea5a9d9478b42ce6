//! At each first free place the first piece in the order that may lie there.

use pelmet_measure::Length;

use super::bolt::{Bolt, longest};
use crate::given::LayoutCloth;
use crate::search::forms::{Laid, Wanted, are_too_near};
use crate::search::steps::Steps;

/// Lays the forms on one bolt from its start on: of those that may lie at the first free place,
/// the first in this order. `None` where the steps run out first, or the cloth used passes `limit`.
///
/// Every piece waits at the first place that is free for it alone, and whichever lies nearest to the
/// start is laid there. Of the others only those must look for a new place that it came too near to: a
/// piece more on the bolt frees nothing, and takes away only what it denies.
pub(crate) fn best_fit<'forms>(
    cloth: &LayoutCloth,
    order: &[Wanted<'forms>],
    limit: Length,
    steps: &mut Steps,
) -> Option<Vec<Laid<'forms>>> {
    let mut bolt = Bolt::new(cloth, 0, cloth.bolt_end().min(limit), longest(order));
    let mut waiting = Vec::with_capacity(order.len());
    for wanted in order {
        waiting.push((*wanted, bolt.at_first_place(*wanted, steps)?));
    }
    while let Some(first) = first_of(&waiting) {
        let (_, laid) = waiting.remove(first);
        bolt.add(laid);
        steps.spend(waiting.len());
        for (wanted, it) in &mut waiting {
            if are_too_near(cloth.gap, &laid, it) {
                *it = bolt.at_first_place(*wanted, steps)?;
            }
        }
        if steps.are_spent() {
            return None;
        }
    }
    Some(bolt.into_laid())
}

/// Which of the pieces lies first along the bolt, then across it.
fn first_of(waiting: &[(Wanted<'_>, Laid<'_>)]) -> Option<usize> {
    let key = |(_, (_, it)): &(usize, &(Wanted<'_>, Laid<'_>))| (it.place.along, it.place.across);
    waiting.iter().enumerate().min_by_key(key).map(|(at, _)| at)
}
