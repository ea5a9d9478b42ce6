//! One edge of the sewn line on its way out to the cut line.

use kurbo::Vec2;
use pelmet_measure::Length;
use pelmet_model::geometry::Vector;
use pelmet_model::{Edge, Point};

use crate::cut::allowance::CutCorner;
use crate::draw::curve::{NEAREST, moved, way};

/// An edge moved out, in millimetres from the panel's top left corner.
#[derive(Clone, Debug)]
pub(crate) struct MovedEdge {
    /// The directions in which it leaves its first corner and comes to its second.
    pub(crate) leaves: Vec2,
    pub(crate) arrives: Vec2,
    /// How far it moves.
    pub(crate) by: f64,
    /// The sewn line, corner to corner.
    sewn: Vec<Vec2>,
    /// The same moved out, before anything is cut off it.
    line: Vec<Vec2>,
}

/// What is left of a moved edge between the corners of the cut line.
#[derive(Clone, Debug)]
pub(crate) enum Trimmed {
    /// An edge with these points between its corners.
    Left {
        /// None for a straight edge.
        between: Vec<Point>,
    },
    /// Nothing: so much is missing, where that can be said.
    Gone {
        /// The length by which the corners have changed places.
        missing: Option<Length>,
    },
    /// A curve with too small a radius for its allowance.
    TooTight {
        /// The radius where it is tightest.
        radius: Length,
    },
}

impl MovedEdge {
    pub(crate) fn new(edge: &Edge, (from, to): (Point, Point), by: Length) -> Self {
        let mut points = vec![from];
        points.extend(edge.between());
        points.push(to);
        let sewn: Vec<Vec2> = points.into_iter().map(from_origin).collect();
        let chord = Vector::between(from, to);
        let ends = edge
            .curve
            .as_ref()
            .map_or((chord, chord), |curve| (curve.leaves, curve.arrives));
        let mut moved = Self {
            leaves: unit(ends.0),
            arrives: unit(ends.1),
            by: by.as_millimetres_f64(),
            sewn,
            line: vec![],
        };
        moved.line = moved.moved_out();
        moved
    }

    pub(crate) fn is_curved(&self) -> bool {
        self.sewn.len() > 2
    }

    /// The first side of the sewn line.
    pub(crate) fn first_side(&self) -> Vec2 {
        sides(&self.sewn)
            .first()
            .map_or(self.leaves, |(from, to)| *to - *from)
    }

    /// The last side of the sewn line.
    pub(crate) fn last_side(&self) -> Vec2 {
        sides(&self.sewn)
            .last()
            .map_or(self.arrives, |(from, to)| *to - *from)
    }

    /// The direction outward at its start.
    pub(crate) fn out_at_start(&self) -> Vec2 {
        out(self.leaves)
    }

    /// The direction outward at its end.
    pub(crate) fn out_at_end(&self) -> Vec2 {
        out(self.arrives)
    }

    /// How its start is moved.
    pub(crate) fn square_out_at_start(&self) -> Vec2 {
        self.out_at_start() * self.by
    }

    /// How its end is moved.
    pub(crate) fn square_out_at_end(&self) -> Vec2 {
        self.out_at_end() * self.by
    }

    /// Where this moved edge and the next first cross, going back from the corner between them: the
    /// side of each, and the point.
    pub(crate) fn crossing(&self, next: &Self) -> Option<((usize, usize), Vec2)> {
        let (own, others) = (sides(&self.line), sides(&next.line));
        let mut nearest: Option<(usize, (usize, usize), Vec2)> = None;
        // Two curved lines moved in may cross more than once. The crossing wanted is the first that the
        // corner runs into as it is moved: the one fewest sides away from it along both lines together. So
        // the search goes back from the corner, and stops where even the nearest side left is farther off.
        let last = own.len().saturating_sub(1);
        for (index, own) in own.iter().enumerate().rev() {
            let back = last.saturating_sub(index);
            for (other_index, other) in others.iter().enumerate() {
                let away = back.saturating_add(other_index);
                if nearest.is_some_and(|(nearest, ..)| nearest <= away) {
                    break;
                }
                if let Some(there) = meeting(*own, *other) {
                    nearest = Some((away, (index, other_index), there));
                }
            }
        }
        nearest.map(|(_, sides, there)| (sides, there))
    }

    /// Each point moved out square to the curve there: at its ends by its own direction, between
    /// them to where the moved sides meet.
    fn moved_out(&self) -> Vec<Vec2> {
        let ways: Vec<Vec2> = sides(&self.sewn)
            .into_iter()
            .map(|(from, to)| (to - from).normalize())
            .collect();
        let nexts = ways.iter().skip(1);
        let between = ways.iter().zip(nexts).map(|(before, after)| {
            let (one, other) = (out(*before), out(*after));
            // Half way between two unit normals, as long as it takes to lie one unit out from both sides:
            // 1 / cos(half the turn), since |one + other| = 2 cos and 1 + one.other = 2 cos^2 of it.
            (one + other) / (1.0 + one.dot(other))
        });
        let outs = std::iter::once(self.out_at_start())
            .chain(between)
            .chain([self.out_at_end()]);
        self.sewn
            .iter()
            .zip(outs)
            .map(|(point, out)| *point + out * self.by)
            .collect()
    }

    /// The radius where it is tightest, if moving it out has turned a side of it round.
    fn too_tight(&self, kept: std::ops::Range<usize>) -> Option<Length> {
        if !self.is_curved() {
            return None;
        }
        let (sewn, line) = (sides(&self.sewn), sides(&self.line));
        let turned = sewn
            .iter()
            .zip(&line)
            .enumerate()
            .filter_map(|(index, (sewn, moved))| {
                let (way, moved) = (sewn.1 - sewn.0, moved.1 - moved.0);
                // How long the moved side is for its sewn one, negative where it runs backward. The length
                // falls in line with the distance moved and is nothing at the radius, so that the two tell
                // the radius: part = 1 - by / radius.
                let part = moved.dot(way) / way.dot(way);
                (kept.contains(&index) && part <= 0.0).then(|| self.by.abs() / (1.0 - part))
            });
        let least = turned.fold(f64::INFINITY, f64::min);
        least
            .is_finite()
            .then(|| Length::from_millimetres_f64(least).unwrap_or(Length::LARGEST))
    }
}

/// Cuts off what lies beyond the corners.
pub(crate) fn trim(edge: &MovedEdge, start: &CutCorner, end: &CutCorner) -> Trimmed {
    let (Some(&from), Some(&to)) = (start.at.last(), end.at.first()) else {
        return Trimmed::Gone { missing: None };
    };
    let last_side = edge.line.len().saturating_sub(2);
    let first = start.crossing.map_or(0, |(_, after)| after);
    let last = end.crossing.map_or(last_side, |(before, _)| before);
    if let Some(radius) = edge.too_tight(first..last.saturating_add(1)) {
        return Trimmed::TooTight { radius };
    }
    let (way_on, left) = (edge.way_of(first, last), way(from, to));
    let in_order = first < last || (first == last && left.dot(way_on) > 0.0);
    if !in_order {
        let missing = Length::from_millimetres_f64(left.hypot());
        return Trimmed::Gone { missing };
    }
    if !edge.is_curved() {
        return Trimmed::Left { between: vec![] };
    }
    // An end that no other edge cuts off is a point of the cut line too: the corner lies beyond it.
    let skipped = start
        .crossing
        .map_or(0, |(_, after)| after.saturating_add(1));
    let kept = end
        .crossing
        .map_or(edge.line.len(), |(before, _)| before.saturating_add(1));
    let points = edge.line.iter().take(kept).skip(skipped);
    Trimmed::Left {
        between: apart(points, from, to),
    }
}

impl MovedEdge {
    fn way_of(&self, first: usize, last: usize) -> Vec2 {
        let from = self.sewn.get(first).copied().unwrap_or_default();
        let to = self.sewn.get(last.saturating_add(1)).copied();
        to.unwrap_or_default() - from
    }
}

/// The points that lie apart from one another and from both corners.
fn apart<'a>(points: impl Iterator<Item = &'a Vec2>, from: Point, to: Point) -> Vec<Point> {
    let end = from_origin(to);
    let mut last = from_origin(from);
    let mut kept = Vec::new();
    for point in points {
        if (*point - last).hypot() >= NEAREST && (*point - end).hypot() >= NEAREST {
            last = *point;
            kept.extend(moved(ORIGIN, *point));
        }
    }
    kept
}

const ORIGIN: Point = Point {
    across: Length::ZERO,
    down: Length::ZERO,
};

fn from_origin(point: Point) -> Vec2 {
    way(ORIGIN, point)
}

/// The direction out of the panel, which lies on the left of its line.
fn out(along: Vec2) -> Vec2 {
    Vec2::new(-along.y, along.x)
}

fn unit(span: Vector) -> Vec2 {
    Vec2::new(span.across as f64, span.down as f64).normalize()
}

fn sides(line: &[Vec2]) -> Vec<(Vec2, Vec2)> {
    let ends = line.iter().skip(1);
    line.iter().copied().zip(ends.copied()).collect()
}

/// Where two sides cross, ends included.
fn meeting(one: (Vec2, Vec2), other: (Vec2, Vec2)) -> Option<Vec2> {
    let (own, others, between) = (one.1 - one.0, other.1 - other.0, other.0 - one.0);
    let turn = own.cross(others);
    let (along_own, along_other) = (between.cross(others) / turn, between.cross(own) / turn);
    let within = |part: f64| (0.0..=1.0).contains(&part);
    (within(along_own) && within(along_other)).then(|| one.0 + own * along_own)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn moved(line: &[(f64, f64)]) -> MovedEdge {
        MovedEdge {
            leaves: Vec2::ZERO,
            arrives: Vec2::ZERO,
            by: 0.0,
            sewn: vec![],
            line: line.iter().map(|&(x, y)| Vec2::new(x, y)).collect(),
        }
    }

    /// The next line comes back and crosses this one a second time, further from the corner in
    /// sides of the two lines.
    #[test]
    fn of_two_crossings_the_one_nearer_to_the_corner_is_taken() {
        let own = moved(&[(0.0, 0.0), (10.0, 0.0), (20.0, 0.0)]);
        let next = moved(&[(5.0, 5.0), (5.0, -5.0), (15.0, -5.0), (15.0, 5.0)]);
        let crossing = own.crossing(&next);
        assert_eq!(crossing, Some(((0, 0), Vec2::new(5.0, 0.0))));
        let apart = moved(&[(5.0, 5.0), (15.0, 5.0)]);
        assert_eq!(own.crossing(&apart), None);
    }
}
