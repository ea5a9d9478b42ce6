//! What the pieces that the print holds take of whole repeats.

use std::collections::BTreeMap;

use pelmet_measure::Length;

use super::blocks::{Block, stacked};
use crate::given::LayoutCloth;
use crate::places::{Cut, PrintLines};

/// Whether the print says where along the bolt a cut lies.
pub(super) fn is_held(cut: &Cut) -> bool {
    !cut.grids.first.along.are_anywhere()
}

/// The length that the pieces held by the print take: together, and those of each line of the repeat
/// alone. A part of the pieces never takes more than all of them, and fewer of them may have lines in
/// common that are farther apart.
pub(super) fn in_repeats(cloth: &LayoutCloth, held: &[&Cut]) -> Length {
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
        .map(|cuts| on_common_lines(cloth, cuts))
        .max()
        .unwrap_or_default()
}

/// Pieces that all start on common lines: each then takes a whole number of periods, but for the
/// waste after the last one.
///
/// Where one piece follows another, it cannot start before the next line after the gap: so the length
/// from its start to that line is denied to all others abreast of it, and may be counted as a block.
/// Only behind the last piece nothing follows, and what is wasted there need not be bought. Which piece
/// comes last is not known, so the most that any of them wastes is taken off.
fn on_common_lines(cloth: &LayoutCloth, cuts: &[&Cut]) -> Length {
    let Some(lines) = common_lines(cuts) else {
        return Length::ZERO;
    };
    let taken = |cut: &Cut| (cut.length + cloth.gap).round_up_to(lines.period);
    let blocks = cuts.iter().map(|cut| Block::of(cloth, cut, taken(cut)));
    let periods = stacked(cloth, &blocks.collect::<Vec<_>>()).round_up_to(lines.period);
    let most_waste = cuts
        .iter()
        .map(|cut| taken(cut) - cut.length)
        .max()
        .unwrap_or_default();
    lines.first + periods - most_waste
}

/// The widest spaced lines that hold every place of these cuts along the bolt.
pub(super) fn common_lines(cuts: &[&Cut]) -> Option<PrintLines> {
    let all = || {
        cuts.iter()
            .flat_map(|cut| cut.grids.iter())
            .map(|grid| grid.along)
    };
    let earliest = all().min_by_key(|lines| lines.first)?;
    let period = all()
        .map(|lines| lines.first - earliest.first)
        .fold(earliest.period, greatest_common_measure);
    Some(PrintLines { period, ..earliest })
}

/// The greatest length that goes into both a whole number of times, by Euclid; into zero everything
/// does.
pub(super) fn greatest_common_measure(one: Length, other: Length) -> Length {
    let (mut measure, mut rest) = (one, other);
    while rest.is_positive() {
        (measure, rest) = (rest, measure - measure.round_down_to(rest));
    }
    measure
}
