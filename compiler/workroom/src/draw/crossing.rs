//! Whether a closed line crosses or touches itself, answered exactly.

use std::cmp::Ordering;
use std::collections::BTreeSet;

use pelmet_model::Point;
use pelmet_model::geometry::{Vector, closed};

/// The pairs of edges (by the index of the corner each starts at, the smaller first) that cross or
/// touch where a sound outline would not. One mistake makes edges that follow one another cross the
/// same others, so pairs beside a pair already found are left out.
pub(crate) fn crossings(corners: &[Point]) -> Vec<(usize, usize)> {
    let edges: Vec<Line> = closed(corners)
        .enumerate()
        .map(|(index, (from, to))| Line { index, from, to })
        .collect();
    let mut by_left = edges.clone();
    by_left.sort_by_key(|line| (line.left(), line.index));
    let mut open: Vec<Line> = Vec::new();
    let mut found: Vec<(usize, usize)> = Vec::new();
    for line in by_left {
        // Lines that end left of this one can meet neither it nor any that follows.
        open.retain(|other| other.right() >= line.left());
        let met = open
            .iter()
            .filter(|other| other.meets_wrongly(&line, edges.len()));
        found.extend(met.map(|other| ordered(other.index, line.index)).min());
        open.push(line);
    }
    found.sort_unstable();
    let mut beside = BTreeSet::new();
    found.retain(|&(one, other)| {
        let fresh = !beside.contains(&one) && !beside.contains(&other);
        if fresh {
            beside.extend(neighbourhood(one).chain(neighbourhood(other)));
        }
        fresh
    });
    found
}

/// An edge, the one before it and the one after.
fn neighbourhood(edge: usize) -> std::ops::RangeInclusive<usize> {
    edge.saturating_sub(1)..=edge.saturating_add(1)
}

/// One straight edge.
#[derive(Copy, Clone)]
struct Line {
    index: usize,
    from: Point,
    to: Point,
}

impl Line {
    fn left(&self) -> pelmet_measure::Length {
        self.from.across.min(self.to.across)
    }

    fn right(&self) -> pelmet_measure::Length {
        self.from.across.max(self.to.across)
    }

    fn span(&self) -> Vector {
        Vector::between(self.from, self.to)
    }

    /// Whether two edges of a closed line of so many meet otherwise than neighbours do at the
    /// corner they share.
    fn meets_wrongly(&self, other: &Self, edges: usize) -> bool {
        if self.is_before(other, edges) {
            self.is_folded_back_by(other)
        } else if other.is_before(self, edges) {
            other.is_folded_back_by(self)
        } else {
            self.meets(other)
        }
    }

    fn is_before(&self, other: &Self, edges: usize) -> bool {
        self.index.saturating_add(1).checked_rem(edges) == Some(other.index)
    }

    /// Whether the next edge comes back along this one.
    fn is_folded_back_by(&self, next: &Self) -> bool {
        let (way_in, way_on) = (self.span(), next.span());
        way_in.cross(way_on) == 0 && way_in.dot(way_on).is_negative()
    }

    fn meets(&self, other: &Self) -> bool {
        let sides = [
            self.side_of(other.from),
            self.side_of(other.to),
            other.side_of(self.from),
            other.side_of(self.to),
        ];
        let [from_side, to_side, own_from_side, own_to_side] = sides;
        let apart = from_side != to_side && own_from_side != own_to_side;
        let crosses = apart && sides.iter().all(|side| side.is_ne());
        // The start of an edge is the end of the one before it, and asked for there.
        crosses || self.carries(other.to) || other.carries(self.to)
    }

    /// On which side of the line a point lies; equal where it lies on the line carried on.
    fn side_of(&self, point: Point) -> Ordering {
        self.span().cross(Vector::between(self.from, point)).cmp(&0)
    }

    /// Whether a point lies on the edge, ends included.
    fn carries(&self, point: Point) -> bool {
        let within = |value, one, other| {
            value >= std::cmp::min(one, other) && value <= std::cmp::max(one, other)
        };
        self.side_of(point).is_eq()
            && within(point.across, self.from.across, self.to.across)
            && within(point.down, self.from.down, self.to.down)
    }
}

fn ordered(one: usize, other: usize) -> (usize, usize) {
    (one.min(other), one.max(other))
}

#[cfg(test)]
mod tests {
    use pelmet_measure::Length;

    use super::*;

    fn line(points: &[(i64, i64)]) -> Vec<Point> {
        let at = Length::millimetres;
        points
            .iter()
            .map(|&(across, down)| Point {
                across: at(across),
                down: at(down),
            })
            .collect()
    }

    #[test]
    fn sound_lines_meet_only_at_their_corners() {
        for points in [
            vec![(0, 0), (0, 5), (5, 5), (5, 0)],
            vec![(0, 0), (0, 5), (5, 0)],
            vec![
                (0, 0),
                (0, 9),
                (4, 9),
                (4, 6),
                (5, 6),
                (5, 9),
                (9, 9),
                (9, 0),
            ],
            vec![(0, 0), (0, 9), (4, 9), (5, 6), (6, 9), (9, 9), (9, 0)],
            vec![],
        ] {
            assert_eq!(crossings(&line(&points)), [], "{points:?}");
        }
    }

    #[test]
    fn crossing_touching_and_doubled_lines_are_found() {
        for (points, pairs) in [
            (vec![(0, 0), (0, 5), (5, 0), (5, 5)], vec![(1, 3)]),
            // The tip of a notch touches the top edge.
            (
                vec![(0, 0), (0, 9), (4, 9), (5, 0), (6, 9), (9, 9), (9, 0)],
                vec![(2, 6)],
            ),
            // A spike that comes back on itself, not as far as it went.
            (
                vec![(0, 0), (0, 5), (3, 5), (3, 9), (3, 7), (5, 7), (5, 0)],
                vec![(2, 3)],
            ),
            // A spike that comes back on itself.
            (
                vec![(0, 0), (0, 5), (3, 5), (3, 9), (3, 5), (5, 5), (5, 0)],
                vec![(1, 3)],
            ),
            // Two edges lie on one another.
            (
                vec![
                    (0, 0),
                    (0, 9),
                    (2, 9),
                    (2, 4),
                    (5, 4),
                    (5, 6),
                    (2, 6),
                    (2, 2),
                    (9, 2),
                    (9, 0),
                ],
                vec![(2, 5)],
            ),
        ] {
            assert_eq!(crossings(&line(&points)), pairs, "{points:?}");
        }
    }
}
