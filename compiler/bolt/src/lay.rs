//! The choice between the layouts.

use std::ops::ControlFlow;

use pelmet_measure::Length;

use crate::bound::at_least;
use crate::cut::all_cuts;
use crate::effort::Steps;
use crate::layout::Arrangement;
use crate::rule::{RuleOfThumb, by_rule_of_thumb};
use crate::search::improved;
use crate::shelves::{ShelfLength, on_shelves};
use crate::trouble::look_for_trouble;
use crate::watch::Watched;
use crate::{Cloth, Effort, Layout, LayoutTrouble, Piece, Watch};

/// Lays all the pieces on the cloth with the usual effort; see [`lay_with`].
///
/// # Errors
///
/// The first [`LayoutTrouble`] found, where the pieces cannot be laid.
pub fn lay(cloth: &Cloth, pieces: &[Piece]) -> Result<Layout, LayoutTrouble> {
    lay_with(cloth, pieces, Effort::usual_for(pieces))
}

/// Lays all the pieces on the cloth.
///
/// Of several layouts the one that buys least is kept, then the one with most of its pieces in
/// rows straight across the cloth, then the one that uses least; where they are equal, the plainer
/// one. None is longer than the rule of thumb. The effort is spent only
/// while something can still be saved.
///
/// # Errors
///
/// The first [`LayoutTrouble`] found, where the pieces cannot be laid.
pub fn lay_with(cloth: &Cloth, pieces: &[Piece], effort: Effort) -> Result<Layout, LayoutTrouble> {
    lay_watched(cloth, pieces, effort, &mut |_| ControlFlow::Continue(()))
}

/// Lays all the pieces as [`lay_with`] does, and tells `watch` how far it has come. Broken off, it
/// gives the best layout found so far; left alone, the same as [`lay_with`].
///
/// # Errors
///
/// The first [`LayoutTrouble`] found, where the pieces cannot be laid.
pub fn lay_watched(
    cloth: &Cloth,
    pieces: &[Piece],
    effort: Effort,
    watch: &mut Watch<'_>,
) -> Result<Layout, LayoutTrouble> {
    look_for_trouble(cloth, pieces)?;
    let cuts = all_cuts(cloth, pieces);
    let RuleOfThumb { placed, length } = by_rule_of_thumb(cloth, pieces);
    let by_rule = Arrangement::of(cloth, pieces, placed);
    let most = by_rule.exact();
    let on_shelves = [ShelfLength::Row, ShelfLength::OfCut, ShelfLength::Allowed]
        .map(|shelf| Arrangement::of(cloth, pieces, on_shelves(cloth, &cuts, shelf)));
    let plain = cheapest(by_rule, on_shelves, most);
    let at_least = at_least(cloth, pieces, &cuts, plain.exact());
    let watched = Watched::new(watch, effort, plain.bought());
    let steps = Steps::of(effort, &watched);
    let searched = improved(cloth, pieces, &cuts, plain.placed(), at_least, steps);
    let searched = Arrangement::of(cloth, pieces, searched);
    let best = cheapest(plain, [searched], most);
    Ok(Layout {
        stopped_early: watched.is_stopped(),
        ..best.into_layout((cloth, pieces), length, at_least)
    })
}

/// The cheapest of the arrangements no longer than `most`; the first where others are no better.
fn cheapest<const OTHERS: usize>(
    first: Arrangement,
    others: [Arrangement; OTHERS],
    most: Length,
) -> Arrangement {
    others
        .into_iter()
        .filter(|other| other.exact() <= most)
        .fold(first, |best, other| {
            if cost(&other) < cost(&best) {
                other
            } else {
                best
            }
        })
}

/// What makes one arrangement worse than another.
fn cost(arrangement: &Arrangement) -> (Length, usize, Length) {
    let bought = arrangement.bought();
    (bought, arrangement.out_of_rows(), arrangement.exact())
}
