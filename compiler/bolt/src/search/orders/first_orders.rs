//! Orders to begin with.

use std::cmp::Reverse;

use pelmet_measure::Length;

use crate::given::LayoutCloth;
use crate::layout::Orientation;
use crate::search::forms::{Form, Laid, TURNED, UPRIGHT, Wanted};

/// The orders that people try first: the longest, the widest and the largest pieces before the others, and
/// shapes head to tail.
pub(super) fn first_orders<'forms>(
    cloth: &LayoutCloth,
    forms: &[&'forms Form],
) -> Vec<Vec<Wanted<'forms>>> {
    let by = |key: fn(&Form) -> (Length, Length)| {
        let mut order = forms.to_vec();
        order.sort_by_key(|form| Reverse((key(form), form.number)));
        order.into_iter().map(Form::any_way).collect()
    };
    let longest_first: Vec<Wanted<'forms>> = by(|form| (form.length, form.width));
    let head_to_tail = head_to_tail(cloth, &longest_first);
    let mut orders = vec![
        longest_first,
        by(|form| (form.width, form.length)),
        by(|form| (form.width + form.length, form.length)),
    ];
    orders.extend(head_to_tail);
    orders
}

/// Of each form that may be turned as many as lie abreast upright, then as many turned, and so on by
/// turns; `None` where no form may be turned.
///
/// Two jabots or tapering swags, one of them turned, make nearly a rectangle. Changes to an order seldom
/// come upon that, for it takes as many turned at once as lie abreast.
fn head_to_tail<'forms>(
    cloth: &LayoutCloth,
    order: &[Wanted<'forms>],
) -> Option<Vec<Wanted<'forms>>> {
    let mut rows = order.to_vec();
    for alike in rows.chunk_by_mut(|one, next| one.form.number == next.form.number) {
        let Some(first) = alike.first().filter(|first| first.may_turn()) else {
            continue;
        };
        let width = first.form.width + cloth.gap;
        let abreast = (cloth.usable_width + cloth.gap)
            .nanometres()
            .checked_div(width.nanometres());
        let abreast = usize::try_from(abreast.unwrap_or(1)).unwrap_or(1).max(1);
        for (wanted, ways) in alike
            .chunks_mut(abreast)
            .zip([UPRIGHT, TURNED].into_iter().cycle())
        {
            wanted.iter_mut().for_each(|wanted| wanted.ways = ways);
        }
    }
    order.iter().any(Wanted::may_turn).then_some(rows)
}

/// The order in which pieces lie along the bolts, each wanted as it lies.
pub(super) fn as_laid<'forms>(laid: &[Laid<'forms>]) -> Vec<Wanted<'forms>> {
    let mut in_order = laid.to_vec();
    in_order.sort_by_key(|it| (it.bolt, it.place.along, it.place.across));
    let wanted = |it: &Laid<'forms>| Wanted {
        form: it.form,
        ways: match it.orientation {
            Orientation::Upright => UPRIGHT,
            Orientation::Turned => TURNED,
        },
    };
    in_order.iter().map(wanted).collect()
}
