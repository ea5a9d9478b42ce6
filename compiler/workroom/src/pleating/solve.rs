//! Settling the lengths a rule leaves open, its counts being settled.

use pelmet_measure::Length;

use super::ROUNDING;
use super::piece::{Measure, Piece, Role, Value, sum};

/// What the part of the strip that a rule describes has to meet.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub(super) struct Wanted {
    /// What the pleats together take up.
    pub(super) take_up: Option<Length>,
    /// What one of the sums comes to.
    pub(super) width: Option<(Measure, Length)>,
}

/// Moves the values of the pieces from their ideals until the wanted sums are met; `None` where
/// their ranges do not allow it.
pub(super) fn solve(mut pieces: Vec<Piece>, wanted: &Wanted) -> Option<Vec<Piece>> {
    if let Some(take_up) = wanted.take_up {
        let target = Target {
            measure: Measure::TakeUp,
            sum: take_up,
        };
        target.approach(&mut pieces, |value| {
            in_range(value, value.role == Role::Depth)
        });
        if target.missing(&pieces).abs() > ROUNDING {
            return None;
        }
    }
    if let Some((measure, width)) = wanted.width {
        let depths_are_free = wanted.take_up.is_none();
        let takes_rest = pieces.iter().any(Piece::is_rest);
        let least = if takes_rest {
            sum(&pieces, measure).min(width)
        } else {
            width
        };
        meet_width(
            &mut pieces,
            Target {
                measure,
                sum: least,
            },
            depths_are_free,
        )?;
    }
    Some(pieces)
}

/// A sum to be met.
#[derive(Copy, Clone)]
struct Target {
    measure: Measure,
    sum: Length,
}

impl Target {
    fn missing(self, pieces: &[Piece]) -> Length {
        self.sum - sum(pieces, self.measure)
    }

    /// Moves every value within the limits named for it toward the target, in proportion to the
    /// room those limits leave, as far as they let it.
    fn approach(self, pieces: &mut [Piece], limits: impl Fn(&Value) -> Option<(Length, Length)>) {
        let missing = self.missing(pieces);
        let room_of = |value: &Value| {
            limits(value).map_or(Length::ZERO, |limits| {
                room(
                    value,
                    limits,
                    value.weight(self.measure),
                    missing.is_positive(),
                )
            })
        };
        let total: Length = pieces.iter().flat_map(Piece::values).map(room_of).sum();
        let need = missing.clamp(-total, total);
        let mut share = Share {
            need,
            total,
            passed: Length::ZERO,
            given: Length::ZERO,
        };
        for value in pieces.iter_mut().flat_map(Piece::values_mut) {
            value.now += share.next(room_of(value), value.weight(self.measure));
        }
    }
}

/// A need shared out in proportion to room, from one value to the next, so that the parts add up
/// to the whole and what is rounded off one is passed on to the next.
struct Share {
    need: Length,
    total: Length,
    passed: Length,
    given: Length,
}

impl Share {
    /// By how much the next value moves, with this much room in the sum and counting `weight`
    /// times in it.
    fn next(&mut self, room: Length, weight: i64) -> Length {
        self.passed += room;
        let each = u32::try_from(weight.abs()).unwrap_or(1).max(1);
        let due = self
            .need
            .portion(nanometres(self.passed), nanometres(self.total))
            - self.given;
        let (least, most) = if self.need.is_negative() {
            (-room.divided(each), Length::ZERO)
        } else {
            (Length::ZERO, room.divided(each))
        };
        let move_by = due.divided(each).clamp(least, most);
        self.given += move_by * i64::from(each);
        move_by * weight.signum()
    }
}

fn meet_width(pieces: &mut [Piece], target: Target, depths_are_free: bool) -> Option<()> {
    target.approach(pieces, |value| in_range(value, value.role == Role::Plain));
    target.approach(pieces, |value| {
        in_range(
            value,
            value.role == Role::Face || (value.role == Role::Depth && depths_are_free),
        )
    });
    if target.missing(pieces).abs() > ROUNDING {
        return None;
    }
    target.approach(pieces, rounding_room);
    // Nothing plain to take up the rounding: a sliver of plain cloth ends the strip.
    (!target.missing(pieces).is_negative()).then_some(())
}

fn in_range(value: &Value, movable: bool) -> Option<(Length, Length)> {
    movable.then_some((value.range.least, value.range.most))
}

fn rounding_room(value: &Value) -> Option<(Length, Length)> {
    let movable = value.role == Role::Plain && value.now >= ROUNDING;
    movable.then(|| (value.now - ROUNDING, value.now + ROUNDING))
}

/// How much a value can give to a sum that should grow, or take from one that should shrink.
fn room(value: &Value, (least, most): (Length, Length), weight: i64, grow: bool) -> Length {
    let room = if grow == (weight > 0) {
        most - value.now
    } else {
        value.now - least
    };
    room.max(Length::ZERO) * weight.saturating_abs()
}

fn nanometres(length: Length) -> u64 {
    u64::try_from(length.nanometres()).unwrap_or(0)
}
