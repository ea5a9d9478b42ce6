//! Scallops: where one arc ends and the next begins.

use num_traits::ToPrimitive;
use pelmet_measure::Length;
use pelmet_model::geometry::Vector;
use pelmet_model::{Point, ScallopNumber};

use crate::draw::outline::MAXIMUM_CORNERS;

/// Equal scallops along a straight line.
pub(crate) struct Scallops {
    from: Point,
    to: Point,
    count: u32,
}

impl Scallops {
    /// Between two points of an outline of this width. `None` where they have no width.
    pub(crate) fn new(
        (from, to): (Point, Point),
        number: ScallopNumber,
        width: Length,
    ) -> Option<Self> {
        let line = Vector::between(from, to).length();
        let count = match number {
            ScallopNumber::Count(count) => count,
            ScallopNumber::About(wide) => nearest_count(line, wide.at(width))?,
        };
        let some = count > 0 && line.is_positive();
        some.then_some(Self { from, to, count })
    }

    /// Where each of them ends.
    pub(crate) fn cusps(&self) -> impl Iterator<Item = Point> {
        let (across, down) = (
            self.to.across - self.from.across,
            self.to.down - self.from.down,
        );
        let count = u64::from(self.count);
        (1..=count).map(move |number| Point {
            across: self.from.across + across.portion(number, count),
            down: self.from.down + down.portion(number, count),
        })
    }
}

/// How many of a width come nearest to filling a line, at least one. Past the limit on corners the
/// exact number no longer matters.
fn nearest_count(line: Length, wide: Length) -> Option<u32> {
    if !wide.is_positive() {
        return None;
    }
    let many = line.ratio_to(wide)?.round().to_integer();
    let most = MAXIMUM_CORNERS.saturating_add(1);
    Some(many.to_u32().unwrap_or(most).clamp(1, most))
}
