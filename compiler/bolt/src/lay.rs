//! Refuses what cannot be laid, makes all the layouts, and chooses between them.

mod feasible;

use std::ops::ControlFlow;

use pelmet_measure::Length;

use self::feasible::look_for_findings;
use crate::bound::lower_bound;
use crate::given::{LayingFinding, LayoutCloth, LayoutPiece};
use crate::layout::{Arrangement, Layout};
use crate::places::all_cuts;
use crate::rows::{RuleOfThumb, ShelfLength, by_rule_of_thumb, on_shelves};
use crate::search::{SearchEffort, SearchWatch, Steps, Watched, improved};

/// Lays all the pieces on the cloth with the usual effort; see [`lay_with`].
///
/// # Errors
///
/// The first [`LayingFinding`] found, where the pieces cannot be laid.
pub fn lay(cloth: &LayoutCloth, pieces: &[LayoutPiece]) -> Result<Layout, LayingFinding> {
    lay_with(cloth, pieces, SearchEffort::usual_for(pieces))
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
/// The first [`LayingFinding`] found, where the pieces cannot be laid.
pub fn lay_with(
    cloth: &LayoutCloth,
    pieces: &[LayoutPiece],
    effort: SearchEffort,
) -> Result<Layout, LayingFinding> {
    lay_watched(cloth, pieces, effort, &mut |_| ControlFlow::Continue(()))
}

/// Lays all the pieces as [`lay_with`] does, and tells `watch` how far it has come. Broken off, it
/// gives the best layout found so far; left alone, the same as [`lay_with`].
///
/// # Errors
///
/// The first [`LayingFinding`] found, where the pieces cannot be laid.
pub fn lay_watched(
    cloth: &LayoutCloth,
    pieces: &[LayoutPiece],
    effort: SearchEffort,
    watch: &mut SearchWatch<'_>,
) -> Result<Layout, LayingFinding> {
    look_for_findings(cloth, pieces)?;
    let cuts = all_cuts(cloth, pieces);
    let RuleOfThumb { placed, length } = by_rule_of_thumb(cloth, pieces);
    let by_rule = Arrangement::of(cloth, pieces, placed);
    let most = by_rule.exact();
    let on_shelves = [ShelfLength::Row, ShelfLength::OfCut, ShelfLength::Allowed]
        .map(|shelf| Arrangement::of(cloth, pieces, on_shelves(cloth, &cuts, shelf)));
    // A bound counts from a layout that is known, and the search from both: the shorter the layout it
    // begins with, the less it has to look at; and what reaches the bound need not be searched at all.
    let plain = cheapest(by_rule, on_shelves, most);
    let lower_bound = lower_bound(cloth, pieces, &cuts, plain.exact());
    let watched = Watched::new(watch, effort, plain.bought());
    let steps = Steps::of(effort, &watched);
    let searched = improved(cloth, pieces, &cuts, plain.placed(), lower_bound, steps);
    let searched = Arrangement::of(cloth, pieces, searched);
    let best = cheapest(plain, [searched], most);
    Ok(Layout {
        stopped_early: watched.is_stopped(),
        ..best.into_layout((cloth, pieces), length, lower_bound)
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

/// What makes one arrangement worse than another: what it buys, then how many turns of the shears it
/// takes, then what it uses. Cloth used and not bought saves nothing, and simple cutting saves time.
fn cost(arrangement: &Arrangement) -> (Length, usize, Length) {
    let bought = arrangement.bought();
    (bought, arrangement.out_of_rows(), arrangement.exact())
}
