//! Shapes on cloth without a repeat along it: pushed toward the start of the bolt, column by column,
//! until they touch.

use pelmet_measure::Length;

use super::form::{Laid, Lying, shapes};
use super::shape::Turned;
use crate::Cloth;
use crate::effort::Steps;
use crate::print::Lines;
use crate::slabs::Between;
use crate::space::Place;

/// So many columns are tried beside those where a piece lies against another, evenly spread.
const COLUMNS_BETWEEN: u32 = 16;

/// What lies on a part of a bolt.
#[derive(Copy, Clone)]
pub(super) struct OnBolt<'run, 'forms> {
    pub cloth: &'run Cloth,
    pub number: u32,
    pub laid: &'run [Laid<'forms>],
}

/// The first free place along the bolt from a place on and before another, of those where the piece
/// lies against others across and of some between; `on` is all that lies there.
pub(super) fn first_in_columns(
    on: OnBolt<'_, '_>,
    it: Lying<'_>,
    across: Lines,
    (from, end): (Length, Length),
    steps: &mut Steps,
) -> Option<Place> {
    let mut best: Option<Place> = None;
    for column in columns(on, it, across) {
        steps.spend(
            on.laid
                .len()
                .saturating_add(1)
                .saturating_mul(it.form.steps()),
        );
        if steps.are_spent() {
            return best;
        }
        let along = first_along(on, it, column, from);
        if along < best.map_or(end, |best| best.along) {
            best = Some(Place {
                across: column,
                along,
            });
        }
    }
    best
}

/// The places across that are tried.
fn columns(on: OnBolt<'_, '_>, it: Lying<'_>, lines: Lines) -> Vec<Length> {
    let cloth = on.cloth;
    let last = cloth.usable_width - it.form.width;
    let beside_flaws = cloth
        .flaws_of(on.number)
        .flat_map(|flaw| [flaw.left - it.form.width, flaw.right]);
    let against = on.laid.iter().flat_map(|laid| {
        let (left, right) = (laid.place.across, laid.place.across + laid.form.width);
        [
            left - it.form.width - cloth.gap,
            left,
            right - it.form.width,
            right + cloth.gap,
        ]
    });
    let between = (0..=COLUMNS_BETWEEN).map(|part| last.divided(COLUMNS_BETWEEN) * i64::from(part));
    let mut columns: Vec<Length> = against
        .chain(beside_flaws)
        .chain(between)
        .chain([last])
        .filter(|column| !column.is_negative())
        .map(|column| lines.at_or_after(column))
        .filter(|column| *column <= last)
        .collect();
    columns.sort_unstable();
    columns.dedup();
    columns
}

/// The first free place along the bolt in one column, from a place on.
fn first_along(on: OnBolt<'_, '_>, it: Lying<'_>, across: Length, from: Length) -> Length {
    let mut denied: Vec<(Length, Length)> = on
        .cloth
        .flaws_of(on.number)
        .filter(|flaw| across < flaw.right && flaw.left < across + it.form.width)
        .map(|flaw| (flaw.from - it.form.length, flaw.to))
        .collect();
    for laid in on.laid {
        deny_along(on.cloth.gap, laid, it, across, &mut denied);
    }
    denied.sort_unstable();
    let mut along = from;
    for (from, to) in denied {
        if from >= along {
            break;
        }
        along = along.max(to);
    }
    along
}

/// Adds what `laid` denies to a piece in this column.
fn deny_along(
    gap: Length,
    laid: &Laid<'_>,
    it: Lying<'_>,
    across: Length,
    denied: &mut Vec<(Length, Length)>,
) {
    let start = laid.place.along;
    let right = across - laid.place.across;
    if right >= laid.form.width + gap || -right >= it.form.width + gap {
        return;
    }
    let (least, most) = (-(it.form.length + gap), laid.form.length + gap);
    match shapes(laid, it) {
        None => denied.push((start + least, start + most)),
        Some((ours, theirs)) => {
            let turned = Turned {
                ours: laid.turned,
                theirs: it.turned,
            };
            let between = ours.denied_along(theirs, turned, right);
            let clipped = |(from, to): Between| (start + from.max(least), start + to.min(most));
            denied.extend(between.into_iter().map(clipped));
        }
    }
}
