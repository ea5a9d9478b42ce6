//! Choosing among the counts a rule allows.

use pelmet_measure::Length;

use super::counts::{Counts, settled, written_for};
use super::halves::Halves;
use super::limits::MAXIMUM_PIECES;
use super::piece::{Piece, Value};
use super::reach::{is_within_limits, panel_pleats};
use super::solve::{Wanted, solve};
use super::strip::{Steps, in_working_order};
use crate::rounding::ROUNDING;

/// The pieces that meet what is wanted with the smallest largest departure from an ideal; of equals
/// those with the fewest pleats. `None` where no choice of counts meets it.
pub(super) fn nearest_to_ideals(
    steps: &Steps,
    choices: &[Counts],
    halves: Halves,
    wanted: &Wanted,
) -> Option<Vec<Piece>> {
    let candidates = choices
        .iter()
        .filter_map(|counts| Candidate::of(steps, counts, halves, wanted));
    let mut candidates: Vec<Candidate> = candidates.collect();
    let departures = candidates.iter().map(|candidate| candidate.departure);
    // Departures that differ by rounding are ties, or the last nanometre would choose between one pleat
    // more and one less.
    let as_near_as_the_nearest = departures.min()? + ROUNDING;
    candidates.sort_by_key(|candidate| {
        let departure = candidate.departure.max(as_near_as_the_nearest);
        (departure, candidate.pleats)
    });
    candidates
        .iter()
        .find_map(|candidate| candidate.pieces(steps, wanted))
}

/// What is left over when pieces that stand for many share a sum in whole nanometres: some for
/// each piece of the largest strip. The strip itself is then settled piece by piece.
const LEFT_OVER: Length = Length::from_nanometres(8 * MAXIMUM_PIECES as i64);

/// A choice of counts by which what is wanted can be met.
struct Candidate<'counts> {
    counts: &'counts Counts,
    written: Vec<Piece>,
    pleats: i64,
    departure: Length,
}

impl<'counts> Candidate<'counts> {
    fn of(steps: &Steps, counts: &'counts Counts, halves: Halves, wanted: &Wanted) -> Option<Self> {
        let written = written_for(steps, counts);
        if !is_within_limits(&written, halves) {
            return None;
        }
        let pleats = panel_pleats(&written, halves);
        // One piece stands for all that a step orders, so that trying a choice costs what the rule is long
        // and not what the strip is. The strip itself is settled only for the choice that is taken.
        let written = solve(written, wanted, ROUNDING + LEFT_OVER)?;
        let departures = written.iter().flat_map(Piece::values).map(Value::departure);
        let departure = departures.max().unwrap_or_default();
        Some(Self {
            counts,
            written,
            pleats,
            departure,
        })
    }

    fn pieces(&self, steps: &Steps, wanted: &Wanted) -> Option<Vec<Piece>> {
        let pieces = in_working_order(&settled(steps, self.counts), &self.written);
        solve(pieces, wanted, ROUNDING)
    }
}
