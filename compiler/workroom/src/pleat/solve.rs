//! Settling the lengths a rule leaves open, its counts being settled.

use pelmet_measure::Length;

use super::piece::{Measure, Piece, Role, Value, sum};
use crate::rounding::ROUNDING;

/// What the part of the strip that a rule describes has to meet.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub(super) struct Wanted {
    /// What the pleats together take up.
    pub(super) take_up: Option<Length>,
    /// What one of the sums comes to.
    pub(super) width: Option<(Measure, Length)>,
}

/// Moves the values of the pieces from where they are until the wanted sums are met, but for what
/// is rounded off; `None` where their ranges do not allow it.
pub(super) fn solve(
    mut pieces: Vec<Piece>,
    wanted: &Wanted,
    rounded_off: Length,
) -> Option<Vec<Piece>> {
    let target = |measure, sum| Target {
        measure,
        sum,
        rounded_off,
    };
    // With both widths given the take-up is settled first, by depths alone, since plain cloth and faces
    // take up nothing; what is left to meet is a width, which depths may then no longer touch.
    if let Some(take_up) = wanted.take_up {
        let target = target(Measure::TakeUp, take_up);
        target.approach(&mut pieces, |value| {
            in_range(value, value.role == Role::Depth)
        });
        if !target.is_near(&pieces) {
            return None;
        }
    }
    if let Some((measure, width)) = wanted.width {
        let takes_rest = pieces.iter().any(Piece::is_rest);
        let least = if takes_rest {
            sum(&pieces, measure)
        } else {
            width
        };
        let depths_are_free = wanted.take_up.is_none();
        target(measure, width.min(least)).meet(&mut pieces, depths_are_free)?;
    }
    Some(pieces)
}

/// A sum to be met.
#[derive(Copy, Clone)]
struct Target {
    measure: Measure,
    sum: Length,
    rounded_off: Length,
}

impl Target {
    /// Moves plain cloth, then if that is not enough faces, and depths where they are free.
    fn meet(self, pieces: &mut [Piece], depths_are_free: bool) -> Option<()> {
        self.approach(pieces, |value| {
            in_range(
                value,
                value.is_open() && (depths_are_free || value.role != Role::Depth),
            )
        });
        self.approach(pieces, |value| in_range(value, value.role == Role::Plain));
        self.approach(pieces, |value| match value.role {
            Role::Plain => None,
            Role::Face => in_range(value, true),
            Role::Depth => in_range(value, depths_are_free),
        });
        if !self.is_near(pieces) {
            return None;
        }
        // Shares in whole nanometres leave a remainder. Plain cloth takes it up even past its range: a
        // micrometre is no mistake of the maker's, and a strip that misses its width by one would be.
        self.approach(pieces, rounding_room);
        // With nothing plain to take up the rounding, a sliver of plain cloth ends the strip.
        (!self.missing(pieces).is_negative()).then_some(())
    }

    fn is_near(self, pieces: &[Piece]) -> bool {
        self.missing(pieces).abs() <= self.rounded_off
    }

    fn missing(self, pieces: &[Piece]) -> Length {
        self.sum - sum(pieces, self.measure)
    }

    /// Moves every value within the limits named for it toward the target, in proportion to the
    /// room those limits leave, as far as they let it.
    fn approach(self, pieces: &mut [Piece], limits: impl Fn(&Value) -> Option<(Length, Length)>) {
        let missing = self.missing(pieces);
        let grow = missing.is_positive();
        let room_of = |value: &Value| {
            let limits = limits(value).unwrap_or((value.now, value.now));
            room(value, limits, value.weight(self.measure), grow)
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
        // What is due is always worked out from the beginning (need x room so far / all room) and what was
        // given is taken off: rounding each share by itself would add up to another sum than the need.
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

fn in_range(value: &Value, movable: bool) -> Option<(Length, Length)> {
    movable.then_some((value.range.least, value.range.most))
}

fn rounding_room(value: &Value) -> Option<(Length, Length)> {
    let movable = value.role == Role::Plain && value.now >= ROUNDING;
    movable.then(|| (value.now - ROUNDING, value.now + ROUNDING))
}

/// How much a value can give to a sum that should grow, or take from one that should shrink.
fn room(value: &Value, (least, most): (Length, Length), weight: i64, grow: bool) -> Length {
    let room = if grow == weight.is_positive() {
        most - value.now
    } else {
        value.now - least
    };
    room.max(Length::ZERO) * weight.saturating_abs()
}

fn nanometres(length: Length) -> u64 {
    u64::try_from(length.nanometres()).unwrap_or(0)
}
