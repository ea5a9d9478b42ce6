//! Shapes on cloth without a repeat along it: pushed toward the start of the bolt, column by column,
//! until they touch.
//!
//! Where the print gives lines along the bolt, a place is looked for line by line. Without them two
//! slanting sides may come to rest at any place along, which no end of another piece foretells; but in a
//! given column across the cloth the first free place is exact, and a few columns tell most.

use pelmet_measure::Length;

use crate::given::LayoutCloth;
use crate::places::{NoFit, Place, PrintLines};
use crate::search::forms::{Laid, Lying, deny_along};
use crate::search::steps::Steps;

/// So many columns are tried beside those where a piece lies against another, evenly spread.
const COLUMNS_BETWEEN: u32 = 16;

/// What lies on a part of a bolt.
#[derive(Copy, Clone)]
pub(super) struct OnBolt<'run, 'forms> {
    /// Whose flaws and edges limit it.
    pub cloth: &'run LayoutCloth,
    /// Which bolt, from 0.
    pub number: u32,
    /// The pieces that lie there.
    pub laid: &'run [Laid<'forms>],
}

/// The first free place along the bolt from a place on and before another, of those where the piece
/// lies against others across and of some between; `on` is all that lies there.
pub(super) fn first_in_columns(
    on: OnBolt<'_, '_>,
    it: Lying<'_>,
    across: PrintLines,
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

/// The places across that are tried: where a piece lies against the sides of another or in line with them,
/// beside a flaw, at the edges of the cloth, and some evenly spread. The spread ones are for slanting
/// sides, along which a piece may come to rest anywhere.
fn columns(on: OnBolt<'_, '_>, it: Lying<'_>, lines: PrintLines) -> Vec<Length> {
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
    let mut denied: Vec<NoFit> = on
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
