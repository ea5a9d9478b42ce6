//! Widths and lengths counted at once, for a length that is asked about.
//!
//! If the pieces find room in a length, they do so however widths and lengths are counted, as long as
//! what lies side by side never counts for more than the whole (S. P. Fekete and J. Schepers, "A
//! general framework for bounds for higher-dimensional orthogonal packing problems", Mathematical
//! Methods of Operations Research 60, 2004). So a length is too short where they count for more than
//! it has room for.
//!
//! Widths alone need no length to be asked about, for the length of the strip is what comes out. But a
//! dual-feasible function of lengths says what a length is as a part of the whole, so the whole has to be
//! known first: lengths are asked about one after another, each half-way between two.

use pelmet_measure::Length;

use super::blocks::{Block, count};
use super::dual_feasible::{DualFeasible, dual_feasible_functions};

/// So many widths and lengths are tried for each way of counting.
const MOST_SIZES: usize = 8;

/// With more blocks than these it takes long and shows little more than their area does.
const MOST_BLOCKS: usize = 120;

/// So often the distance to a length that is not too short is halved.
const HALVINGS: usize = 20;

/// A length that the blocks need in a strip of this width, from `bound` on and under `most`; `bound`
/// where nothing more is shown.
///
/// Every length that is found too short is so by itself, and then so is any shorter one, which has room
/// for less. That what is *not* found too short might be so all the same only lowers the bound.
pub(super) fn lower_bound(width: Length, blocks: &[Block], bound: Length, most: Length) -> Length {
    if blocks.len() > MOST_BLOCKS || blocks.is_empty() {
        return bound;
    }
    let whole = count(width);
    let widths = blocks.iter().map(|block| count(block.width));
    let functions = dual_feasible_functions(whole, widths, MOST_SIZES);
    let counted: Vec<Counted> = functions
        .iter()
        .map(|function| Counted::by(*function, whole, blocks.iter().map(|block| block.width)))
        .collect();
    let (mut too_short, mut enough) = (bound, most);
    for _ in 0..HALVINGS {
        let asked = too_short + (enough - too_short).divided(2);
        if asked <= too_short {
            break;
        }
        if is_too_short(&counted, blocks, asked) {
            too_short = asked;
        } else {
            enough = asked;
        }
    }
    if too_short > bound {
        too_short + Length::from_nanometres(1)
    } else {
        bound
    }
}

/// What each block counts for in one direction by one dual-feasible function.
struct Counted {
    /// One number for each block, in their order.
    blocks: Vec<u64>,
    /// What all that lie side by side may count for at most.
    whole: u64,
}

impl Counted {
    fn by(function: DualFeasible, whole: u64, sizes: impl Iterator<Item = Length>) -> Counted {
        Counted {
            blocks: sizes.map(|size| function.of(count(size), whole)).collect(),
            whole: function.of_whole(whole),
        }
    }
}

/// Whether the blocks count for more than a length has room for, by any two functions: one of widths
/// and one of lengths. Which two tell most nobody knows beforehand, so every pair is tried; the widths
/// are counted once for all lengths that are asked about.
fn is_too_short(widths: &[Counted], blocks: &[Block], length: Length) -> bool {
    let whole = count(length);
    let lengths = blocks.iter().map(|block| count(block.length));
    let functions = dual_feasible_functions(whole, lengths, MOST_SIZES);
    functions.into_iter().any(|function| {
        let lengths = Counted::by(function, whole, blocks.iter().map(|block| block.length));
        widths.iter().any(|widths| {
            let both = widths.blocks.iter().zip(&lengths.blocks);
            let taken = both.map(|(one, other)| product(*one, *other));
            taken.fold(0, u128::saturating_add) > product(widths.whole, lengths.whole)
        })
    })
}

fn product(one: u64, other: u64) -> u128 {
    u128::from(one).saturating_mul(other.into())
}
