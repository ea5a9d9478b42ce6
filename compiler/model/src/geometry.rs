//! Exact plane geometry on whole nanometres. Products of two lengths of a design fit an `i128`
//! with room to spare, so every question of side and turn has an exact answer.

use pelmet_measure::Length;

/// A point of the flat panel.
#[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub struct Point {
    /// From the left edge.
    pub across: Length,
    /// From the made-up top edge.
    pub down: Length,
}

/// Where one point lies from another, in nanometres.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub struct Vector {
    /// To the right.
    pub across: i128,
    /// Downwards.
    pub down: i128,
}

impl Vector {
    /// The way from one point to another.
    pub fn between(from: Point, to: Point) -> Self {
        Self {
            across: (to.across - from.across).nanometres().into(),
            down: (to.down - from.down).nanometres().into(),
        }
    }

    /// How far `next` turns away from this direction: zero where both lie along one line, negative
    /// where it turns left as the panel is seen.
    pub fn cross(self, next: Self) -> i128 {
        let (one, other) = (
            product(self.across, next.down),
            product(self.down, next.across),
        );
        one.saturating_sub(other)
    }

    /// Positive where `next` goes on more or less the same way, negative where it comes back.
    pub fn dot(self, next: Self) -> i128 {
        product(self.across, next.across).saturating_add(product(self.down, next.down))
    }

    /// The same way back.
    pub fn turned_round(self) -> Self {
        Self {
            across: self.across.saturating_neg(),
            down: self.down.saturating_neg(),
        }
    }

    /// The same way in a mirror that stands upright.
    pub fn mirrored(self) -> Self {
        Self {
            across: self.across.saturating_neg(),
            ..self
        }
    }

    /// How long it is, to the nearest nanometre.
    pub fn length(self) -> Length {
        let square = self.dot(self).unsigned_abs();
        let whole = square.isqrt();
        let beyond = square.saturating_sub(whole.saturating_mul(whole));
        let nearest = if beyond > whole {
            whole.saturating_add(1)
        } else {
            whole
        };
        Length::from_nanometres(i64::try_from(nearest).unwrap_or(i64::MAX))
    }
}

/// Twice the signed area inside a closed line: negative where it runs as [`crate::Shape`] asks,
/// down the left side first.
pub fn doubled_area(corners: &[Point]) -> i128 {
    let Some(&first) = corners.first() else {
        return 0;
    };
    closed(corners)
        .map(|(from, to)| Vector::between(first, from).cross(Vector::between(first, to)))
        .fold(0, i128::saturating_add)
}

/// The edges of a closed line: each corner with the next, the last with the first.
pub fn closed(corners: &[Point]) -> impl Iterator<Item = (Point, Point)> {
    let ends = corners.iter().copied().cycle().skip(1);
    corners.iter().copied().zip(ends)
}

/// The item before each item of a closed row and the item itself.
pub fn with_previous<T: Copy>(items: &[T]) -> impl Iterator<Item = (T, T)> {
    let last = items.last().copied();
    last.into_iter()
        .chain(items.iter().copied())
        .zip(items.iter().copied())
}

fn product(one: i128, other: i128) -> i128 {
    one.saturating_mul(other)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn point(across: i64, down: i64) -> Point {
        Point {
            across: Length::from_nanometres(across),
            down: Length::from_nanometres(down),
        }
    }

    #[test]
    fn lengths_round_to_the_nearest() {
        for (across, down, length) in [
            (3, 4, 5),
            (-3, 4, 5),
            (1, 1, 1),
            (2, 2, 3),
            (0, 0, 0),
            (0, -7, 7),
            (5, 5, 7),
        ] {
            let span = Vector::between(point(10, 20), point(10 + across, 20 + down));
            assert_eq!(
                span.length(),
                Length::from_nanometres(length),
                "{across} {down}"
            );
        }
    }

    #[test]
    fn down_the_left_side_first_has_a_negative_area() {
        let rectangle = [point(0, 0), point(0, 7), point(5, 7), point(5, 0)];
        assert_eq!(doubled_area(&rectangle), -70);
        let mut back = rectangle;
        back.reverse();
        assert_eq!(doubled_area(&back), 70);
        assert_eq!(doubled_area(&[]), 0);
    }

    #[test]
    fn a_closed_line_comes_back_to_its_start() {
        let corners = [point(0, 0), point(0, 1), point(1, 1)];
        let edges: Vec<_> = closed(&corners).collect();
        assert_eq!(
            edges,
            [
                (corners[0], corners[1]),
                (corners[1], corners[2]),
                (corners[2], corners[0])
            ]
        );
        let pairs: Vec<_> = with_previous(&[1, 2, 3]).collect();
        assert_eq!(pairs, [(3, 1), (1, 2), (2, 3)]);
    }
}
