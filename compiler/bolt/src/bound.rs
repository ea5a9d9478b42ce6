//! A length no layout can beat, so that the maker knows how much a better layout could still save.
//!
//! Every bound drops some of the rules a layout must keep, so each holds for every layout, and so
//! does the greatest of them.

mod both_ways;
mod flaws;
mod lines;
mod rows;
mod shapes;
mod shares;

use std::collections::BTreeMap;

use pelmet_measure::Length;

use self::shares::{Share, shares};
use crate::cut::Cut;
use crate::print::Lines;
use crate::{Cloth, Piece};

/// So many widths are tried for each way of counting widths.
const MOST_WIDTHS: usize = 48;

/// The cloth that a piece denies to all others: its size, with the gap and what the print wastes.
#[derive(Copy, Clone)]
struct Block {
    width: Length,
    length: Length,
}

/// The greatest bound found for these cuts on this cloth, over all bolts together, of which some
/// layout is known that takes no more than `most`.
pub(crate) fn at_least(cloth: &Cloth, pieces: &[Piece], cuts: &[Cut], most: Length) -> Length {
    let bound = greatest(cloth, pieces, cuts, most);
    if pieces.iter().any(|piece| piece.outline.is_some()) {
        return bound;
    }
    bound.round_up_to(measure_of_places(cloth, cuts))
}

/// All rectangles pushed toward the start of the bolt, each lies on a line of the print, or against
/// another piece, a flaw or the start: where one begins or ends is a multiple of this.
fn measure_of_places(cloth: &Cloth, cuts: &[Cut]) -> Length {
    let of_cut = |cut: &Cut| {
        let lines = cut.grids.iter().map(|grid| grid.along);
        let lines = lines.flat_map(|lines| [lines.first, lines.period]);
        lines
            .chain([cut.length])
            .fold(Length::ZERO, greatest_common_measure)
    };
    let flaws = cloth.flaws.iter().map(|flaw| flaw.to);
    cuts.iter()
        .map(of_cut)
        .chain(flaws)
        .fold(cloth.gap, greatest_common_measure)
}

fn greatest(cloth: &Cloth, pieces: &[Piece], cuts: &[Cut], most: Length) -> Length {
    let latest_end = latest_end(cloth, cuts);
    let area = shapes::over_area(cloth, pieces);
    let parts: &[Cut] = &shapes::whole_parts(pieces, cuts);
    let unprinted = area.max(plain(cloth, parts, most));
    let bound = unprinted.max(latest_end);
    // Every bolt with an end may end with a row that wastes nothing, and how many there are is not
    // known here; nor which of them are used, flaws and all.
    if cloth.bolt_length.is_some() {
        return bound;
    }
    let held: Vec<&Cut> = parts.iter().filter(|cut| is_held(cut)).collect();
    let with_print = bound
        .max(matched(cloth, &held))
        .max(lines::at_least(cloth, parts));
    let with_print = rows::at_least(cloth, &held, with_print);
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
fn plain(cloth: &Cloth, cuts: &[Cut], most: Length) -> Length {
    let gap = if cloth.bolt_length.is_some() {
        Length::ZERO
    } else {
        cloth.gap
    };
    let blocks = cuts.iter().map(|cut| block(cloth, cut, cut.length + gap));
    let blocks: Vec<Block> = blocks.collect();
    let width = cloth.usable_width + cloth.gap;
    both_ways::at_least(width, &blocks, stacked(cloth, &blocks), most + gap) - gap
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
    let mut lengths: BTreeMap<u64, u128> = BTreeMap::new();
    for block in blocks {
        let length = lengths.entry(count(block.width)).or_default();
        *length = length.saturating_add(count(block.length).into());
    }
    shares(whole, lengths.keys().copied(), MOST_WIDTHS)
        .into_iter()
        .map(|way| spread_over(&lengths, whole, way))
        .max()
        .unwrap_or_default()
}

/// The length over which the blocks' shares fill the whole width, rounded up. Saturation can only
/// lower it.
fn spread_over(lengths: &BTreeMap<u64, u128>, whole: u64, way: Share) -> Length {
    let total = lengths
        .iter()
        .map(|(width, length)| u128::from(way.of(*width, whole)).saturating_mul(*length))
        .fold(0, u128::saturating_add);
    let room = u128::from(way.of_whole(whole)).max(1);
    Length::from_nanometres(i64::try_from(total.div_ceil(room)).unwrap_or(0))
}

fn count(length: Length) -> u64 {
    u64::try_from(length.nanometres()).unwrap_or(0)
}
