//! What is wrong with pleats laid out.

mod centre;
mod edge_inside;
mod edge_overrun;
mod fold_on_fold;
mod run_together;
mod worst;

use std::collections::BTreeSet;

use pelmet_model::{Folding, PleatMade, PleatMatter, PleatRule, Pleating};

use super::halves::Halves;

/// Everything wrong with pleats that could be laid out.
///
/// One mistake gives one finding. The two halves of a mirrored rule are one, and of a pair of folds
/// that cross the centre line the right one is reported; a step that is repeated is reported where
/// it is worst; and a pleat that crosses the centre line, runs into another or covers its edge is
/// not reported again for the stack or the underfold that makes. Where a fold passes the side edge
/// in front, the edge lies inside the fold; where it sticks out behind, the fold overruns the edge.
pub fn check(rule: &PleatRule, pleating: &Pleating, folding: &Folding) -> Vec<PleatMatter> {
    let halves = Halves::of(rule);
    let mut found = run_together::find(halves, pleating);
    let astray: BTreeSet<usize> = found.iter().filter_map(second_step).collect();
    let settled = |pleat: &PleatMade| !astray.contains(&pleat.step);
    found.extend(centre::find(halves, pleating, settled));
    found.extend(edge_inside::find(pleating, settled));
    let named: BTreeSet<usize> = found.iter().flat_map(steps_named).collect();
    found.extend(edge_overrun::find(halves, pleating, folding, &named));
    found.extend(fold_on_fold::find(rule, pleating, folding, &named));
    found
}

fn second_step(matter: &PleatMatter) -> Option<usize> {
    match matter {
        PleatMatter::PleatsRunTogether { second, .. } => Some(*second),
        _ => None,
    }
}

fn steps_named(matter: &PleatMatter) -> Vec<usize> {
    match *matter {
        PleatMatter::PleatsRunTogether { first, second, .. } => vec![first, second],
        PleatMatter::FoldCrossesCentre { step, .. } | PleatMatter::EdgeInsideFold { step, .. } => {
            vec![step]
        }
        _ => Vec::new(),
    }
}
