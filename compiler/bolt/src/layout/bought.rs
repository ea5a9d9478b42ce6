//! What a layout uses of each bolt, and what is bought to use it.

use std::collections::BTreeMap;

use pelmet_measure::Length;

use super::placed::Placed;
use crate::given::{LayoutCloth, LayoutPiece};

/// How much of one bolt a layout takes.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Default)]
pub struct BoltLengths {
    /// Used, to the end of its last piece.
    pub exact: Length,
    /// Bought: the same rounded up to the buying step, but never more than the bolt holds.
    pub bought: Length,
}

/// What the pieces take of each bolt up to the last that is used.
pub(super) fn lengths_of_bolts(
    cloth: &LayoutCloth,
    pieces: &[LayoutPiece],
    placed: &[Placed],
) -> Vec<BoltLengths> {
    let ends = ends_of_bolts(pieces, placed);
    let bolts = ends.last_key_value().map(|(last, _)| 0..=*last);
    let lengths = |bolt| {
        let exact = ends.get(&bolt).copied().unwrap_or_default();
        let bought = bought(cloth, exact);
        BoltLengths { exact, bought }
    };
    bolts.into_iter().flatten().map(lengths).collect()
}

fn ends_of_bolts(pieces: &[LayoutPiece], placed: &[Placed]) -> BTreeMap<u32, Length> {
    let mut ends = BTreeMap::new();
    for it in placed {
        let length = pieces
            .get(it.piece)
            .map_or(Length::ZERO, |piece| piece.length);
        let end: &mut Length = ends.entry(it.bolt).or_default();
        *end = (*end).max(it.along + length);
    }
    ends
}

/// What is bought of one bolt to use so much of it.
pub(crate) fn bought(cloth: &LayoutCloth, exact: Length) -> Length {
    let rounded = exact.round_up_to(cloth.buying_step);
    cloth.bolt_length.map_or(rounded, |bolt| rounded.min(bolt))
}

/// What must be bought for a length used, whatever the bolts.
///
/// With several bolts it is the length itself and no more: a bolt bought whole need not be a multiple
/// of the step, so a length spread over bolts may be bought without any rounding.
pub(crate) fn bought_at_least(cloth: &LayoutCloth, length: Length) -> Length {
    if cloth.bolt_length.is_some() {
        length
    } else {
        length.round_up_to(cloth.buying_step)
    }
}
