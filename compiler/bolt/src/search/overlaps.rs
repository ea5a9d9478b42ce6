//! Search for a layout of a given length: the pieces may overlap at first, and the overlaps are
//! worked out one by one.
//!
//! A piece that overlaps moves to where it overlaps least. Where that no longer helps, the overlaps
//! that are left count for more and more, which drives the pieces out of the jam (guided local
//! search: C. Voudouris and E. Tsang, "Guided local search and its application to the travelling
//! salesman problem", European Journal of Operational Research 113, 1999; to layouts it was brought by
//! J. Egeblad, B. K. Nielsen and A. Odgaard, "Fast neighborhood search for two- and three-dimensional
//! nesting problems", same journal 183, 2007, and S. Umetani and others, "Solving the irregular strip
//! packing problem via guided local search for overlap minimization", International Transactions in
//! Operational Research 16, 2009).
//!
//! Without weights the search would stop at the first layout in which no piece alone can overlap less.
//! Weights change what is least: two pieces that have been in each other's way for long come to cost so
//! much that one of them rather lies on two others that have not, and the jam moves on elsewhere.

mod jam;
mod moves;
mod weights;

use self::jam::Jam;
use super::dice::Dice;
use super::end_to_end::Stretch;
use super::forms::Laid;
use super::steps::Steps;
use crate::given::LayoutCloth;

/// Works the overlaps out of `laid`, all on one bolt, with every piece within one of the `stretches`.
/// `None` where the steps run out first, or a piece is too long.
///
/// Pieces are looked at in a new order each round. In the same order the same piece would always give
/// way first, and two may push each other to and fro without an end.
pub(super) fn without_overlaps<'forms>(
    cloth: &LayoutCloth,
    laid: &[Laid<'forms>],
    stretches: &[Stretch],
    dice: &mut Dice,
    steps: &mut Steps,
) -> Option<Vec<Laid<'forms>>> {
    let mut jam = Jam::of(cloth, laid, stretches, dice);
    jam.pull_in(steps)?;
    loop {
        let mut in_the_way = jam.in_the_way(steps);
        if in_the_way.is_empty() {
            return Some(jam.into_laid());
        }
        if steps.are_spent() {
            return None;
        }
        jam.shuffle(&mut in_the_way);
        for index in in_the_way {
            jam.relieve(index, steps);
        }
        jam.weigh(steps);
    }
}
