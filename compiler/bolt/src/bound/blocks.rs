//! Blocks of cloth, and the length they take at least in a strip.

use std::collections::BTreeMap;

use pelmet_measure::Length;

use super::dual_feasible::{DualFeasible, dual_feasible_functions};
use crate::given::LayoutCloth;
use crate::places::Cut;

/// So many widths are tried for each kind of dual-feasible function.
const MOST_WIDTHS: usize = 48;

/// The cloth that a piece denies to all others: its size, with the gap and what the print wastes.
///
/// The gap is counted as a part of the piece, to its right and below it, and the cloth as wider by one
/// gap: then pieces that keep their gap are blocks that do not overlap, and back.
#[derive(Copy, Clone)]
pub(super) struct Block {
    /// Across the bolt, with the gap.
    pub width: Length,
    /// Along the bolt, with whatever it denies there.
    pub length: Length,
}

impl Block {
    /// The block of a cut that denies so much of the bolt's length.
    pub(super) fn of(cloth: &LayoutCloth, cut: &Cut, length: Length) -> Block {
        Block {
            width: cut.width + cloth.gap,
            length,
        }
    }
}

/// The length that the blocks take in a strip as wide as the cloth, whichever way they lie: by
/// area, and by every way of counting widths that never finds more than one whole width abreast.
///
/// On any line across the strip the widths of the blocks there add up to no more than the whole, so
/// whatever a dual-feasible function makes of them does too. Added up over all lines, each block counts
/// its length times what its width is counted for: and that has to fit in the length times the whole.
pub(super) fn stacked(cloth: &LayoutCloth, blocks: &[Block]) -> Length {
    let whole = count(cloth.usable_width + cloth.gap).max(1);
    // Blocks of one width are counted alike, and pieces come in few widths.
    let mut lengths: BTreeMap<u64, u128> = BTreeMap::new();
    for block in blocks {
        let length = lengths.entry(count(block.width)).or_default();
        *length = length.saturating_add(count(block.length).into());
    }
    dual_feasible_functions(whole, lengths.keys().copied(), MOST_WIDTHS)
        .into_iter()
        .map(|function| spread_over(&lengths, whole, function))
        .max()
        .unwrap_or_default()
}

/// The length over which what the blocks count for fills the whole width, rounded up. Saturation can
/// only lower it.
fn spread_over(lengths: &BTreeMap<u64, u128>, whole: u64, function: DualFeasible) -> Length {
    let total = lengths
        .iter()
        .map(|(width, length)| u128::from(function.of(*width, whole)).saturating_mul(*length))
        .fold(0, u128::saturating_add);
    let room = u128::from(function.of_whole(whole)).max(1);
    Length::from_nanometres(i64::try_from(total.div_ceil(room)).unwrap_or(0))
}

/// A length as a number of nanometres; none where it is below zero.
pub(super) fn count(length: Length) -> u64 {
    u64::try_from(length.nanometres()).unwrap_or(0)
}
