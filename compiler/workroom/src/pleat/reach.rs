//! What a rule comes to for given counts, before its lengths are settled.

use pelmet_measure::Length;
use pelmet_model::MAXIMUM_PLEATS;

use super::halves::Halves;
use super::limits::MAXIMUM_PIECES;
use super::piece::{Measure, Piece};
use super::solve::Wanted;

/// The sums that the ranges of a rule can reach.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub(super) struct Reach {
    /// The smallest sum.
    pub(super) least: Length,
    /// The largest sum; `None` where plain cloth takes whatever is left.
    pub(super) most: Option<Length>,
    /// Whether no value takes away from the sum, as the depth of an inverted pleat can.
    only_adds: bool,
}

impl Reach {
    pub(super) fn of(written: &[Piece], measure: Measure) -> Self {
        let mut reach = Self {
            least: Length::ZERO,
            most: Some(Length::ZERO),
            only_adds: true,
        };
        for piece in written {
            let lost = piece.lost_in_turns(measure);
            reach.least += lost;
            reach.most = reach.most.map(|most| most + lost);
        }
        for value in written.iter().flat_map(Piece::values) {
            let weight = value.weight(measure);
            let (one, other) = (value.range.least * weight, value.range.most * weight);
            reach.only_adds &= !one.min(other).is_negative();
            reach.least += one.min(other);
            reach.most = reach.most.map(|most| most + one.max(other));
        }
        if measure != Measure::TakeUp && written.iter().any(Piece::is_rest) {
            reach.most = None;
        }
        reach
    }

    /// Whether these pieces come to too much already, and more of them can only add to it.
    pub(super) fn is_beyond(written: &[Piece], wanted: &Wanted) -> bool {
        let take_up = wanted.take_up.map(|take_up| (Measure::TakeUp, take_up));
        take_up
            .into_iter()
            .chain(wanted.width)
            .any(|(measure, sum)| {
                let reach = Self::of(written, measure);
                reach.only_adds && reach.least > sum
            })
    }
}

/// The pleats these pieces make on a panel.
pub(super) fn panel_pleats(written: &[Piece], halves: Halves) -> i64 {
    let pleats = written.iter().filter(|piece| piece.is_pleat());
    total_times(pleats).saturating_mul(halves.copies().into())
}

/// Whether a panel of these pieces is small enough to be laid out.
pub(super) fn is_within_limits(written: &[Piece], halves: Halves) -> bool {
    panel_pleats(written, halves) <= MAXIMUM_PLEATS.into()
        && total_times(written.iter()) <= MAXIMUM_PIECES.into()
}

fn total_times<'made>(pieces: impl Iterator<Item = &'made Piece>) -> i64 {
    pieces.fold(0, |total: i64, piece| total.saturating_add(piece.times))
}
