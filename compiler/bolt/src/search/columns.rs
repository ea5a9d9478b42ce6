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

/// The first free place under `end` along the bolt, of those where the piece lies against others
/// across and of some between.
pub(super) fn first_in_columns(
    cloth: &Cloth,
    laid: &[Laid<'_>],
    it: Lying<'_>,
    across: Lines,
    end: Length,
    steps: &mut Steps,
) -> Option<Place> {
    let mut best: Option<Place> = None;
    for column in columns(cloth, laid, it, across) {
        steps.spend(laid.len().saturating_add(1).saturating_mul(it.form.steps()));
        if steps.are_spent() {
            return best;
        }
        let along = first_along(cloth, laid, it, column);
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
fn columns(cloth: &Cloth, laid: &[Laid<'_>], it: Lying<'_>, lines: Lines) -> Vec<Length> {
    let last = cloth.usable_width - it.form.width;
    let against = laid.iter().flat_map(|laid| {
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

/// The first free place along the bolt in one column.
fn first_along(cloth: &Cloth, laid: &[Laid<'_>], it: Lying<'_>, across: Length) -> Length {
    let mut denied: Vec<(Length, Length)> = Vec::new();
    for laid in laid {
        deny_along(cloth.gap, laid, it, across, &mut denied);
    }
    denied.sort_unstable();
    let mut along = Length::ZERO;
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
