//! The choice between the layouts.

use pelmet_measure::Length;

use crate::bound::at_least;
use crate::cut::all_cuts;
use crate::layout::Arrangement;
use crate::rule::{RuleOfThumb, by_rule_of_thumb};
use crate::shelves::{ShelfLength, on_shelves};
use crate::trouble::look_for_trouble;
use crate::{Cloth, Layout, LayoutTrouble, Piece};

/// Lays all the pieces, upright, on the cloth.
///
/// Of several layouts the one that buys least is kept, then the one that uses least; where they
/// are equal, the one that follows the rule of thumb. None is longer than the rule of thumb.
///
/// # Errors
///
/// The first [`LayoutTrouble`] found, where the pieces cannot be laid.
pub fn lay(cloth: &Cloth, pieces: &[Piece]) -> Result<Layout, LayoutTrouble> {
    look_for_trouble(cloth, pieces)?;
    let cuts = all_cuts(cloth, pieces);
    let RuleOfThumb { placed, length } = by_rule_of_thumb(cloth, pieces);
    let by_rule = Arrangement::of(cloth, pieces, placed);
    let best = [ShelfLength::OfCut, ShelfLength::Allowed]
        .map(|shelf| Arrangement::of(cloth, pieces, on_shelves(cloth, &cuts, shelf)))
        .into_iter()
        .filter(|shelves| shelves.exact() <= by_rule.exact())
        .filter(|shelves| cost(shelves) < cost(&by_rule))
        .min_by_key(cost)
        .unwrap_or(by_rule);
    Ok(best.into_layout(length, at_least(cloth, &cuts)))
}

/// What makes one arrangement worse than another.
fn cost(arrangement: &Arrangement) -> (Length, Length) {
    (arrangement.bought(), arrangement.exact())
}
