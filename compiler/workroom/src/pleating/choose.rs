//! Choosing among the counts a rule allows.

use pelmet_measure::Length;

use super::counts::{Counts, Reach, settled};
use super::halves::Halves;
use super::piece::{Measure, Piece, Value, pieces};
use super::solve::{Wanted, solve};
use super::{MAXIMUM_PIECES, MAXIMUM_PLEATS, ROUNDING};
use crate::PleatStep;

/// The pieces that meet what is wanted with the smallest largest departure from an ideal; of equals
/// those with the fewest pleats. `None` where no choice of counts meets it.
pub(super) fn nearest_to_ideals(
    steps: &[PleatStep],
    choices: &[Counts],
    halves: Halves,
    wanted: &Wanted,
) -> Option<Vec<Piece>> {
    let mut best: Option<(Length, Vec<Piece>)> = None;
    for (_, steps) in promising(steps, choices, halves, wanted) {
        let Some(pieces) = solve(pieces(&steps), wanted) else {
            continue;
        };
        let departure = largest_departure(&pieces);
        if best.as_ref().is_none_or(|(least, _)| departure < *least) {
            best = Some((departure, pieces));
        }
        if departure.is_zero() {
            break;
        }
    }
    best.map(|(_, pieces)| pieces)
}

/// Whether a rule that comes to this much is small enough to be laid out.
pub(super) fn is_within_limits(reach: &Reach, halves: Halves) -> bool {
    reach.pleats.saturating_mul(halves.copies().into()) <= MAXIMUM_PLEATS.into()
        && reach.pieces <= MAXIMUM_PIECES.into()
}

/// The steps for each choice whose ranges reach what is wanted, fewest pleats first. Reach is
/// summed over the written steps, which is quick; only what it lets through is laid out in full.
fn promising(
    steps: &[PleatStep],
    choices: &[Counts],
    halves: Halves,
    wanted: &Wanted,
) -> Vec<(i64, Vec<PleatStep>)> {
    let mut promising = Vec::new();
    for counts in choices {
        let steps = settled(steps, counts);
        let reach = Reach::of(&steps, Measure::TakeUp);
        if is_within_limits(&reach, halves) && reaches(&steps, &reach, wanted) {
            promising.push((reach.pleats, steps));
        }
    }
    promising.sort_by_key(|(pleats, _)| *pleats);
    promising
}

fn reaches(steps: &[PleatStep], take_up: &Reach, wanted: &Wanted) -> bool {
    wanted
        .take_up
        .is_none_or(|wanted| take_up.holds(wanted, ROUNDING))
        && wanted
            .width
            .is_none_or(|(measure, wanted)| Reach::of(steps, measure).holds(wanted, ROUNDING))
}

fn largest_departure(pieces: &[Piece]) -> Length {
    let values = pieces.iter().flat_map(Piece::values);
    values.map(Value::departure).max().unwrap_or_default()
}
