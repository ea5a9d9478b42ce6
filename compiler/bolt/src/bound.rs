//! A length no layout can beat, so that the maker knows how much a better layout could still save.
//!
//! Every bound drops some of the rules a layout must keep, so each holds for every layout, and so
//! does the greatest of them.

mod flaws;
mod rows;
mod shapes;

use std::collections::BTreeMap;

use pelmet_measure::Length;

use crate::cut::Cut;
use crate::print::Lines;
use crate::{Cloth, Piece};

/// Widths are counted in halves, thirds and so on up to this part of the cloth's width.
const SMALLEST_PART: u128 = 16;

/// The cloth that a piece denies to all others: its size, with the gap and what the print wastes.
#[derive(Copy, Clone)]
struct Block {
    width: Length,
    length: Length,
}

/// The greatest bound found for these cuts on this cloth, over all bolts together.
pub(crate) fn at_least(cloth: &Cloth, pieces: &[Piece], cuts: &[Cut]) -> Length {
    let latest_end = latest_end(cloth, cuts);
    let area = shapes::over_area(cloth, pieces);
    let parts: &[Cut] = &shapes::whole_parts(pieces, cuts);
    let unprinted = area.max(plain(cloth, parts));
    let bound = unprinted.max(latest_end);
    // Every bolt with an end may end with a row that wastes nothing, and how many there are is not
    // known here; nor which of them are used, flaws and all.
    if cloth.bolt_length.is_some() {
        return bound;
    }
    let held: Vec<&Cut> = parts.iter().filter(|cut| is_held(cut)).collect();
    let with_print = rows::at_least(cloth, &held, bound.max(matched(cloth, &held)));
    let bars = flaws::Bars::of(cloth, cuts);
    [
        bars.latest_end(cuts),
        bars.past_each(unprinted, Length::ZERO),
        bars.past_each(with_print, cloth.repeat_along.unwrap_or_default()),
    ]
    .into_iter()
    .fold(with_print, Length::max)
}

/// Some piece lies on some bolt, no nearer to its start than the print allows.
fn latest_end(cloth: &Cloth, cuts: &[Cut]) -> Length {
    cuts.iter()
        .map(|cut| cut.first_place(Length::ZERO, cloth.usable_width).along + cut.length)
        .max()
        .unwrap_or_default()
}

/// All pieces as on plain cloth. Cut from several bolts they also stack on one, end to end without
/// a gap; on one bolt each keeps its gap, of which the last is not used.
fn plain(cloth: &Cloth, cuts: &[Cut]) -> Length {
    let gap = if cloth.bolt_length.is_some() {
        Length::ZERO
    } else {
        cloth.gap
    };
    let blocks = cuts.iter().map(|cut| block(cloth, cut, cut.length + gap));
    stacked(cloth, &blocks.collect::<Vec<_>>()) - gap
}

/// Only the pieces that the print holds: together, and those of each line of the repeat alone. A
/// part of the pieces never takes more than all of them.
fn matched(cloth: &Cloth, held: &[&Cut]) -> Length {
    let mut on_same_lines: BTreeMap<Length, Vec<&Cut>> = BTreeMap::new();
    for cut in held.iter().filter(|cut| cut.grids.iter().count() == 1) {
        on_same_lines
            .entry(cut.grids.first.along.first)
            .or_default()
            .push(cut);
    }
    on_same_lines
        .values()
        .map(Vec::as_slice)
        .chain([held])
        .map(|cuts| in_rows(cloth, cuts))
        .max()
        .unwrap_or_default()
}

fn is_held(cut: &Cut) -> bool {
    cut.grids.first.along.period.is_positive()
}

/// Pieces that all start on common lines: each then takes a whole number of periods, but for the
/// waste after the last one.
fn in_rows(cloth: &Cloth, cuts: &[&Cut]) -> Length {
    let Some(lines) = common_lines(cuts) else {
        return Length::ZERO;
    };
    let taken = |cut: &Cut| (cut.length + cloth.gap).round_up_to(lines.period);
    let blocks = cuts.iter().map(|cut| block(cloth, cut, taken(cut)));
    let periods = stacked(cloth, &blocks.collect::<Vec<_>>()).round_up_to(lines.period);
    let most_waste = cuts
        .iter()
        .map(|cut| taken(cut) - cut.length)
        .max()
        .unwrap_or_default();
    lines.first + periods - most_waste
}

/// The widest spaced lines that hold every place of these cuts along the bolt.
fn common_lines(cuts: &[&Cut]) -> Option<Lines> {
    let all = || {
        cuts.iter()
            .flat_map(|cut| cut.grids.iter())
            .map(|grid| grid.along)
    };
    let earliest = all().min_by_key(|lines| lines.first)?;
    let period = all()
        .map(|lines| lines.first - earliest.first)
        .fold(earliest.period, greatest_common_measure);
    Some(Lines { period, ..earliest })
}

fn greatest_common_measure(one: Length, other: Length) -> Length {
    let (mut measure, mut rest) = (one, other);
    while rest.is_positive() {
        (measure, rest) = (rest, measure - measure.round_down_to(rest));
    }
    measure
}

fn block(cloth: &Cloth, cut: &Cut, length: Length) -> Block {
    Block {
        width: cut.width + cloth.gap,
        length,
    }
}

/// The length that the blocks take in a strip as wide as the cloth, whichever way they lie: by
/// area, and by every way of counting widths that never finds more than one whole width abreast.
fn stacked(cloth: &Cloth, blocks: &[Block]) -> Length {
    let whole = count(cloth.usable_width + cloth.gap).max(1);
    (1..=SMALLEST_PART)
        .map(|parts| {
            let share = |width| share_of_width(width, whole, parts);
            spread_over(blocks, whole.saturating_mul(parts), share)
        })
        .fold(spread_over(blocks, whole, |width| width), Length::max)
}

/// The share of the `whole` width that a width counts for, in units of 1 / (`whole` x `parts`).
///
/// The width is rounded down to a number of the parts so chosen that widths abreast still never
/// count for more than one whole: `floor((parts + 1) x width / whole) / parts`, or the width itself
/// where nothing is rounded (S. P. Fekete and J. Schepers, "New classes of fast lower bounds for
/// bin packing problems", Mathematical Programming 91, 2001). A width just over a half counts as a
/// whole one, for nothing as wide goes beside it.
fn share_of_width(width: u128, whole: u128, parts: u128) -> u128 {
    let times = width.saturating_mul(parts.saturating_add(1));
    match times.checked_rem(whole) {
        Some(0) => width.saturating_mul(parts),
        Some(rest) => times.saturating_sub(rest),
        None => 0,
    }
}

/// The length over which the blocks' shares fill the whole width, rounded up. Saturation can only
/// lower it.
fn spread_over(blocks: &[Block], whole: u128, share: impl Fn(u128) -> u128) -> Length {
    let total = blocks
        .iter()
        .map(|block| share(count(block.width)).saturating_mul(count(block.length)))
        .fold(0, u128::saturating_add);
    Length::from_nanometres(i64::try_from(total.div_ceil(whole)).unwrap_or(0))
}

fn count(length: Length) -> u128 {
    u128::try_from(length.nanometres()).unwrap_or(0)
}
