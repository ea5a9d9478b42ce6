//! Curves of an outline: arcs and cubic curves, worked out in floating point and rounded once.

use std::f64::consts::{FRAC_PI_2, PI};

use kurbo::{
    CubicBez, ParamCurve, ParamCurveArclen, ParamCurveExtrema, PathEl, Shape, Vec2, flatten,
};
use pelmet_measure::Length;
use pelmet_model::geometry::Vector;
use pelmet_model::{ArcFault, Circle, Point};

/// How far, in millimetres, a curve may lie from the straight lines between the points that stand
/// for it. An allowance of a few times the curve's radius multiplies it, and a cut line must stay
/// within 0.1 mm.
pub const FLATTENING: f64 = 0.02;

/// Points of a curve nearer to one another than this, in millimetres, are one. Less says nothing
/// about where the line between them goes.
pub(crate) const NEAREST: f64 = 0.001;

/// How exactly the length of a cubic curve is reckoned, in millimetres.
const LENGTH_ACCURACY: f64 = 1e-6;

/// A curve from one corner to another, as the rest of the sums need it.
#[derive(Clone, PartialEq, Debug)]
pub(crate) struct Bend {
    /// The points between its ends.
    pub(crate) between: Vec<Point>,
    /// How long it is along the curve.
    pub(crate) length: Length,
    /// The way it leaves its start.
    pub(crate) leaves: Vector,
    /// The way it comes to its end.
    pub(crate) arrives: Vector,
    /// The circle it runs along, where it is an arc.
    pub(crate) circle: Option<Circle>,
}

/// How an arc is told apart from all others between the same two points.
#[derive(Copy, Clone, Debug)]
pub(crate) enum ArcBy {
    /// It passes through a point.
    Through(Point),
    /// How far it swells from the straight line, positive away from the panel.
    Bulge(Length),
    /// Its radius, as the shorter of the two arcs, and whether it swells away from the panel.
    Radius(Length, bool),
    /// It is level where it starts.
    StartingLevel,
    /// It is level where it ends.
    EndingLevel,
}

/// The arc between two points that differ; `None` where it is a straight line.
pub(crate) fn arc(from: Point, to: Point, by: ArcBy) -> Result<Option<Bend>, ArcFault> {
    let chord = way(from, to);
    let sweep = sweep(from, to, by)?;
    let arc = Arc {
        from,
        start: chord.atan2() - sweep / 2.0,
        radius: chord.hypot() / (2.0 * (sweep / 2.0).sin().abs()),
        sweep,
    };
    // A line has no radius.
    Ok(arc.bend(to).filter(|_| arc.radius.is_finite()))
}

/// The cubic curve between two points, by the two points it is drawn toward. `None` where it has
/// no length or goes out of reach.
pub(crate) fn cubic(from: Point, (first, second): (Point, Point), to: Point) -> Option<Bend> {
    let [first, second, end] = [first, second, to].map(|point| way(from, point));
    let curve = CubicBez::new(
        kurbo::Point::ORIGIN,
        first.to_point(),
        second.to_point(),
        end.to_point(),
    );
    let mut between = Vec::new();
    for part in curve.extrema_ranges() {
        let path = curve.subsegment(part);
        flatten(path.path_elements(FLATTENING), FLATTENING, |element| {
            if let PathEl::LineTo(point) = element {
                between.push(point.to_vec2());
            }
        });
    }
    let leaves = [first, second, end];
    let arrives = [end - second, end - first, end];
    Some(Bend {
        between: between_ends(from, to, between),
        length: Length::from_millimetres_f64(curve.arclen(LENGTH_ACCURACY))?,
        leaves: direction(first_of_some_length(leaves)?),
        arrives: direction(first_of_some_length(arrives)?),
        circle: None,
    })
}

impl Bend {
    /// The same curve run through the other way.
    pub(crate) fn reversed(mut self) -> Self {
        self.between.reverse();
        Self {
            leaves: self.arrives.turned_round(),
            arrives: self.leaves.turned_round(),
            ..self
        }
    }

    /// The same curve in another place.
    pub(crate) fn moved(mut self, place: impl Fn(Point) -> Point) -> Self {
        if let Some(circle) = &mut self.circle {
            circle.centre = place(circle.centre);
        }
        self.with_points(place)
    }

    /// The same curve with its points brought to where they were meant to lie.
    pub(crate) fn with_points(mut self, place: impl Fn(Point) -> Point) -> Self {
        for point in &mut self.between {
            *point = place(*point);
        }
        self
    }

    /// Its mirror image about the upright line at `across`, run through the same way.
    pub(crate) fn mirrored(self, place: impl Fn(Point) -> Point) -> Self {
        let moved = self.moved(place);
        Self {
            leaves: moved.leaves.mirrored(),
            arrives: moved.arrives.mirrored(),
            ..moved
        }
    }

    /// This curve and one that goes on from its end at `joint`.
    pub(crate) fn joined(mut self, joint: Point, next: Self) -> Self {
        self.between.push(joint);
        self.between.extend(next.between);
        Self {
            length: self.length + next.length,
            arrives: next.arrives,
            circle: self
                .circle
                .filter(|circle| next.circle.is_some_and(|next| is_same(*circle, next))),
            ..self
        }
    }
}

/// Whether two arcs run along one circle; a half arc and its mirror image may each have been rounded by
/// a nanometre.
fn is_same(one: Circle, other: Circle) -> bool {
    const ROUNDED: Length = Length::from_nanometres(2);
    let apart = |one: Length, other: Length| (one - other).abs() > ROUNDED;
    one.swells == other.swells
        && !apart(one.radius, other.radius)
        && !apart(one.centre.across, other.centre.across)
        && !apart(one.centre.down, other.centre.down)
}

/// An arc in millimetres: the angle it starts at, and the angle it turns through, positive to the
/// right as it is travelled.
#[derive(Copy, Clone)]
struct Arc {
    from: Point,
    start: f64,
    radius: f64,
    sweep: f64,
}

impl Arc {
    fn bend(self, to: Point) -> Option<Bend> {
        let length = Length::from_millimetres_f64(self.radius * self.sweep.abs())?;
        let between = self.stops().into_iter().map(|turned| self.at(turned));
        Some(Bend {
            between: between_ends(self.from, to, between),
            length,
            leaves: direction(Vec2::from_angle(self.start)),
            arrives: direction(Vec2::from_angle(self.start + self.sweep)),
            circle: self.circle(),
        })
    }

    /// Its circle; `None` where the centre is out of reach. The panel lies on the left of its line, so
    /// that an arc which turns to the left bends away from it.
    fn circle(self) -> Option<Circle> {
        let to_centre = Vec2::from_angle(self.start + FRAC_PI_2 * self.sweep.signum());
        Some(Circle {
            centre: moved(self.from, to_centre * self.radius)?,
            radius: Length::from_millimetres_f64(self.radius)?,
            swells: self.sweep.is_sign_negative(),
        })
    }

    /// Where it is once it has turned so far, from its start. Reckoned from the chord, so that a
    /// flat arc of a huge radius is as exact as any other.
    fn at(self, turned: f64) -> Vec2 {
        // Not centre plus radius: the centre of a nearly straight arc lies kilometres away, and the
        // difference of two such numbers would lose the millimetres.
        let chord = 2.0 * self.radius * (turned.abs() / 2.0).sin();
        Vec2::from_angle(self.start + turned / 2.0) * chord
    }

    /// The turns at which it has a point: every one where it runs level or upright, so that its
    /// extent is exact, and as many between as keep to the flattening.
    fn stops(self) -> Vec<f64> {
        // An arc that turns by t swells r (1 - cos(t/2)) = 2 r sin^2(t/4) from its chord; that is the
        // flattening where t = 4 asin(sqrt(flattening / 2 r)).
        let largest_step = 4.0 * (FLATTENING / self.radius / 2.0).sqrt().min(1.0).asin();
        let mut turns = vec![0.0];
        turns.extend(self.quarter_turns());
        turns.push(self.sweep);
        let nexts = turns.iter().skip(1);
        let parts = turns.iter().zip(nexts).flat_map(|(&from, &to)| {
            let steps = ((to - from).abs() / largest_step).ceil().max(1.0);
            whole_numbers(steps).map(move |step| from + (to - from) * step / steps)
        });
        parts.collect()
    }

    /// The turns after which it runs level or upright, from its start to its end.
    fn quarter_turns(self) -> Vec<f64> {
        let (least, most) = (self.start.min(self.end()), self.start.max(self.end()));
        let first = (least / FRAC_PI_2).ceil();
        let angles = whole_numbers(5.0).map(|quarter| (first + quarter - 1.0) * FRAC_PI_2);
        let within = angles.filter(|angle| (least..=most).contains(angle));
        let mut turns: Vec<f64> = within.map(|angle| angle - self.start).collect();
        if self.sweep.is_sign_negative() {
            turns.reverse();
        }
        turns
    }

    fn end(self) -> f64 {
        self.start + self.sweep
    }
}

/// The numbers from 1 to `last`.
fn whole_numbers(last: f64) -> impl Iterator<Item = f64> {
    std::iter::successors(Some(1.0), |number| Some(number + 1.0))
        .take_while(move |number| *number <= last)
}

/// The angle an arc turns through, positive to the right as it is travelled.
fn sweep(from: Point, to: Point, by: ArcBy) -> Result<f64, ArcFault> {
    let chord = way(from, to);
    let length = chord.hypot();
    match by {
        ArcBy::Through(point) => sweep_through(chord, way(from, point)),
        ArcBy::Bulge(bulge) => Ok(-4.0 * (2.0 * bulge.as_millimetres_f64()).atan2(length)),
        ArcBy::Radius(radius, outward) => {
            let half = length / (2.0 * radius.as_millimetres_f64());
            if !radius.is_positive() || half > 1.0 + 1e-9 {
                let least = Length::from_millimetres_f64(length / 2.0).unwrap_or(Length::LARGEST);
                return Err(ArcFault::RadiusTooSmall { radius, least });
            }
            let turn = 2.0 * half.min(1.0).asin();
            Ok(if outward { -turn } else { turn })
        }
        ArcBy::StartingLevel => off_level(chord).map(|angle| 2.0 * angle),
        ArcBy::EndingLevel => off_level(chord).map(|angle| -2.0 * angle),
    }
}

/// By the angle between the lines from the point to both ends: half of what the rest of the circle
/// spans.
fn sweep_through(chord: Vec2, point: Vec2) -> Result<f64, ArcFault> {
    // Inscribed angle theorem: whoever stands on a circle sees a chord under half the angle that the rest
    // of the circle spans from its centre. The rest is what the arc does not pass, so the arc itself turns
    // by a whole circle less twice that angle.
    let (to_start, to_end) = (-point, chord - point);
    let between = to_start.cross(to_end).atan2(to_start.dot(to_end));
    let straight = between.abs() >= PI - 1e-12;
    if straight {
        return Ok(0.0);
    }
    if between.abs() < 1e-12 {
        return Err(ArcFault::ThroughInLine);
    }
    let sweep = 2.0 * (PI - between.abs());
    Ok(if between > 0.0 { -sweep } else { sweep })
}

/// How far a chord turns from the level direction, left or right, in which it runs.
fn off_level(chord: Vec2) -> Result<f64, ArcFault> {
    if chord.x.abs() < NEAREST {
        return Err(ArcFault::StraightUp);
    }
    Ok((chord.y * chord.x.signum()).atan2(chord.x.abs()))
}

/// The points of a curve that are neither end and lie apart from one another.
fn between_ends(from: Point, to: Point, ways: impl IntoIterator<Item = Vec2>) -> Vec<Point> {
    let end = way(from, to);
    let mut last = Vec2::ZERO;
    let mut between = Vec::new();
    for way in ways {
        if (way - last).hypot() < NEAREST || (way - end).hypot() < NEAREST {
            continue;
        }
        last = way;
        between.extend(moved(from, way));
    }
    between
}

fn first_of_some_length(ways: [Vec2; 3]) -> Option<Vec2> {
    ways.into_iter().find(|way| way.hypot() >= NEAREST)
}

/// The way from one point to another, in millimetres.
pub(crate) fn way(from: Point, to: Point) -> Vec2 {
    Vec2::new(
        (to.across - from.across).as_millimetres_f64(),
        (to.down - from.down).as_millimetres_f64(),
    )
}

/// A direction as whole numbers, large enough that no turn is lost in the rounding.
fn direction(way: Vec2) -> Vector {
    const LENGTH: f64 = 1e6;
    let unit = way / way.hypot() * LENGTH;
    let whole = |part: f64| Length::from_millimetres_f64(part).unwrap_or_default();
    let origin = Point {
        across: Length::ZERO,
        down: Length::ZERO,
    };
    let there = Point {
        across: whole(unit.x),
        down: whole(unit.y),
    };
    Vector::between(origin, there)
}

/// The point so many millimetres from another; `None` where that is out of reach.
pub(crate) fn moved(point: Point, by: Vec2) -> Option<Point> {
    Some(Point {
        across: point.across + Length::from_millimetres_f64(by.x)?,
        down: point.down + Length::from_millimetres_f64(by.y)?,
    })
}
