//! Every piece in turn at the first place that is free.

use pelmet_measure::Length;

use super::bolt::{Bolt, longest};
use crate::given::LayoutCloth;
use crate::search::forms::{Laid, Wanted};
use crate::search::steps::Steps;

/// Lays the forms in this order, each as near to the start of the first bolt and then as far to
/// the left as it may lie. `None` where the steps run out first, or the cloth used of one bolt
/// passes `limit`.
///
/// Packing knows it as bottom-left (B. S. Baker, E. G. Coffman and R. L. Rivest, "Orthogonal packings in
/// two dimensions", SIAM Journal on Computing 9, 1980), and as bottom-left-fill where, as here, later
/// pieces may lie in the holes that earlier ones left.
pub(crate) fn bottom_left<'forms>(
    cloth: &LayoutCloth,
    order: &[Wanted<'forms>],
    limit: Length,
    steps: &mut Steps,
) -> Option<Vec<Laid<'forms>>> {
    let end = cloth.bolt_end().min(limit);
    let mut bolts = vec![Bolt::new(cloth, 0, end, longest(order))];
    for wanted in order {
        let found = bolts
            .iter_mut()
            .find_map(|bolt| bolt.lay(*wanted, steps))
            .is_some();
        if !found {
            // Only a bolt with an end has another after it.
            cloth.bolt_length?;
            lay_on_next(cloth, &mut bolts, *wanted, steps)?;
        }
        if steps.are_spent() {
            return None;
        }
    }
    let laid = (0..).zip(bolts).flat_map(|(number, bolt)| {
        let numbered = move |it| Laid { bolt: number, ..it };
        bolt.into_laid().into_iter().map(numbered)
    });
    Some(laid.collect())
}

/// Lays a form on the next bolt that has room for it: flaws may leave none on a bolt.
fn lay_on_next<'forms>(
    cloth: &LayoutCloth,
    bolts: &mut Vec<Bolt<'_, 'forms>>,
    wanted: Wanted<'forms>,
    steps: &mut Steps,
) -> Option<()> {
    loop {
        let number = u32::try_from(bolts.len()).ok()?;
        let mut next = bolts.first()?.another(number);
        let found = next.lay(wanted, steps).is_some();
        bolts.push(next);
        if found {
            return Some(());
        }
        // Behind the last flaw all bolts are alike: where one of them has no room, none has, and it is
        // the limit that leaves none.
        if !cloth.has_better_bolt(number, Length::ZERO) {
            return None;
        }
    }
}
