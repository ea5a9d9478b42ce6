//! Arcs of circles among the points of a line, so that a compass or a plotter can draw them as such.

use pelmet_measure::Length;
use pelmet_packet::{Arc, Place};

use super::number;
use super::printer::Printer;

/// How far, in millimetres, a point may lie from the circle of its arc: as far as the line between
/// points may lie from the curve they stand for.
const OFF_CIRCLE: f64 = pelmet_workroom::FLATTENING;

/// How far, in millimetres, an arc may swell from the straight line between two of its points. More,
/// and the points would not say that there is an arc.
const MOST_SWELL: f64 = 0.05;

/// Three points lie on a circle whatever the curve; both ends beside them show that it is an arc.
const FEWEST_POINTS: usize = 5;

/// A place in millimetres: across, down.
type Spot = (f64, f64);

/// The arcs of a closed line: for each point, the arc that begins there.
///
/// `on_curve` says of each point whether it lies between two corners. The points of one arc lie between
/// two corners, but for those nearest to the corners, where an allowance may go on straight.
pub(crate) fn arcs(points: &[(Place, bool)], printer: &Printer<'_>) -> Vec<Option<Arc>> {
    let mut arcs: Vec<Option<Arc>> = vec![None; points.len()];
    for run in curves(points) {
        let spots: Vec<Spot> = run
            .iter()
            .filter_map(|index| points.get(*index))
            .map(|(place, _)| (place.across.mm, place.down.mm))
            .collect();
        let Some((first, circle)) = arc_within(&spots) else {
            continue;
        };
        let begins = run.get(first).and_then(|index| arcs.get_mut(*index));
        if let Some(begins) = begins {
            *begins = circle.told(printer);
        }
    }
    arcs
}

/// The curves of a closed line: the indices of their points, with the corner at either end.
fn curves(points: &[(Place, bool)]) -> Vec<Vec<usize>> {
    let mut curves: Vec<Vec<usize>> = Vec::new();
    let mut curve: Vec<usize> = Vec::new();
    let start = points
        .iter()
        .position(|(_, on_curve)| !on_curve)
        .unwrap_or(0);
    let round = (start..points.len()).chain(0..=start);
    for index in round {
        curve.push(index);
        if points.get(index).is_some_and(|(_, on_curve)| !on_curve) {
            curves.extend((curve.len() > 2).then(|| curve.clone()));
            curve = vec![index];
        }
    }
    curves
}

/// The arc that the points of a curve lie on, with the first or the last left out where it takes
/// that: how many are left out before it, and the arc.
fn arc_within(spots: &[Spot]) -> Option<(usize, Circle)> {
    let whole = Some(spots);
    let after_first = spots.get(1..);
    let before_last = spots.split_last().map(|(_, rest)| rest);
    let between = before_last.and_then(|rest| rest.get(1..));
    let candidates = [(0, whole), (1, after_first), (0, before_last), (1, between)];
    candidates
        .into_iter()
        .find_map(|(left_out, spots)| Some((left_out, Circle::of_arc(spots?)?)))
}

/// A circle with the part of it that an arc takes.
struct Circle {
    centre: Spot,
    radius: f64,
    /// The angle from the start of the arc to its end, positive where it runs to the left as the cloth
    /// is seen.
    sweep: f64,
    points: u32,
}

impl Circle {
    /// The circle of an arc through all the points; `None` where they lie on none. Its ends may have been
    /// cut off between two of its points, so that they do not lie on it as nearly as the others.
    fn of_arc(spots: &[Spot]) -> Option<Self> {
        if spots.len() < FEWEST_POINTS {
            return None;
        }
        let [_, inner @ .., _] = spots else {
            return None;
        };
        let middle = inner.get(inner.len().div_euclid(2))?;
        let (centre, radius) = circle_through(*inner.first()?, *middle, *inner.last()?)?;
        let turns = spots.iter().zip(spots.iter().skip(1));
        let turns: Vec<f64> = turns
            .map(|(from, to)| turn(way(centre, *from), way(centre, *to)))
            .collect();
        let stays = spots
            .iter()
            .all(|spot| (length(way(centre, *spot)) - radius).abs() <= OFF_CIRCLE);
        let one_way = turns.iter().all(|turn| *turn > 0.0) || turns.iter().all(|turn| *turn < 0.0);
        let close = turns
            .iter()
            .all(|turn| radius * (1.0 - (turn / 2.0).cos()) <= MOST_SWELL);
        (stays && one_way && close).then(|| Self {
            centre,
            radius,
            sweep: turns.iter().sum(),
            points: number(turns.len()),
        })
    }

    fn told(&self, printer: &Printer<'_>) -> Option<Arc> {
        let (across, down) = self.centre;
        Some(Arc {
            points: self.points,
            centre: printer.place(
                Length::from_millimetres_f64(across)?,
                Length::from_millimetres_f64(down)?,
            ),
            radius: printer.mark(Length::from_millimetres_f64(self.radius)?),
            bulge: (self.sweep / 4.0).tan(),
        })
    }
}

/// The centre and the radius of the circle through three points; `None` where they lie in line.
fn circle_through(first: Spot, middle: Spot, last: Spot) -> Option<(Spot, f64)> {
    let (one, other) = (way(first, middle), way(first, last));
    let doubled = 2.0 * cross(one, other);
    let (one_square, other_square) = (dot(one, one), dot(other, other));
    let from_first = (
        (other.1 * one_square - one.1 * other_square) / doubled,
        (one.0 * other_square - other.0 * one_square) / doubled,
    );
    let radius = length(from_first);
    radius
        .is_finite()
        .then_some(((first.0 + from_first.0, first.1 + from_first.1), radius))
}

/// The angle from one direction to another, positive to the left as the cloth is seen.
fn turn(from: Spot, to: Spot) -> f64 {
    -cross(from, to).atan2(dot(from, to))
}

fn way(from: Spot, to: Spot) -> Spot {
    (to.0 - from.0, to.1 - from.1)
}

fn cross(one: Spot, other: Spot) -> f64 {
    one.0 * other.1 - one.1 * other.0
}

fn dot(one: Spot, other: Spot) -> f64 {
    one.0 * other.0 + one.1 * other.1
}

fn length(way: Spot) -> f64 {
    way.0.hypot(way.1)
}

#[cfg(test)]
mod tests {
    use pelmet_measure::{Length, Style};
    use proptest::prelude::*;

    use super::{Spot, arcs};
    use crate::assemble::printer::Printer;
    use pelmet_packet::{Arc, Place};

    const PRINTER: Printer<'_> = Printer {
        style: Style::METRIC,
        currency: None,
    };

    fn place((across, down): Spot) -> Place {
        let length = |mm| Length::from_millimetres_f64(mm).unwrap();
        PRINTER.place(length(across), length(down))
    }

    /// A piece whose lower edge runs over these spots, from its left side to its right one.
    fn piece(curve: &[Spot]) -> Vec<(Place, bool)> {
        let (first, last) = (*curve.first().unwrap(), *curve.last().unwrap());
        let mut points = vec![(place((first.0, -500.0)), false)];
        let is_between = |spot: &Spot| *spot != first && *spot != last;
        points.extend(curve.iter().map(|spot| (place(*spot), is_between(spot))));
        points.push((place((last.0, -500.0)), false));
        points
    }

    /// Spots on a circle about (0, 0), by their angles from straight down toward the right.
    fn on_circle(radius: f64, from: f64, to: f64, steps: u32) -> Vec<Spot> {
        let angle = |step: u32| from + (to - from) * f64::from(step) / f64::from(steps);
        let spots = (0..=steps).map(angle);
        spots
            .map(|angle| (radius * angle.sin(), radius * angle.cos()))
            .collect()
    }

    fn only_arc(points: &[(Place, bool)]) -> (usize, Arc) {
        let found: Vec<(usize, Arc)> = arcs(points, &PRINTER)
            .into_iter()
            .enumerate()
            .filter_map(|(index, arc)| Some((index, arc?)))
            .collect();
        assert_eq!(found.len(), 1, "{found:?}");
        found[0].clone()
    }

    #[test]
    fn a_half_circle_that_hangs_out_has_a_bulge_of_one() {
        let quarter = std::f64::consts::FRAC_PI_2;
        let (first, arc) = only_arc(&piece(&on_circle(80.0, -quarter, quarter, 90)));
        assert_eq!((first, arc.points), (1, 90));
        assert!((arc.bulge - 1.0).abs() < 1e-6, "{}", arc.bulge);
        assert!((arc.radius.mm - 80.0).abs() < 1e-4, "{}", arc.radius.mm);
        assert!(arc.centre.down.mm.abs() < 1e-4, "{}", arc.centre.down.mm);
    }

    #[test]
    fn a_hollow_has_a_bulge_below_nothing() {
        let mut hollow = on_circle(80.0, -0.7, 0.7, 40);
        for spot in &mut hollow {
            spot.1 = -spot.1;
        }
        let (_, arc) = only_arc(&piece(&hollow));
        assert!(
            (arc.bulge + (1.4_f64 / 4.0).tan()).abs() < 1e-6,
            "{}",
            arc.bulge
        );
    }

    /// An allowance carries the corners on beyond the ends of an arc.
    #[test]
    fn straight_ends_are_no_part_of_an_arc() {
        let mut curve = on_circle(120.0, -0.8, 0.8, 40);
        curve.insert(0, (curve[0].0 - 9.0, curve[0].1 - 1.0));
        curve.push((-curve[0].0, curve[0].1));
        let (first, arc) = only_arc(&piece(&curve));
        assert_eq!((first, arc.points), (2, 40));
    }

    #[test]
    fn what_is_no_arc_has_none() {
        let parabola: Vec<Spot> = (-40..=40)
            .map(|step| (f64::from(step) * 5.0, f64::from(step * step) * -0.05))
            .collect();
        let straight = [(0.0, 0.0), (50.0, 0.0), (100.0, 0.0), (150.0, 0.0)];
        // Four corners of a square lie on a circle, but nothing says that the line follows it.
        let square = [(0.0, 0.0), (0.0, 90.0), (90.0, 90.0), (90.0, 0.0)];
        for curve in [&parabola[..], &straight, &square] {
            let found = arcs(&piece(curve), &PRINTER);
            assert!(found.iter().all(Option::is_none), "{found:?}");
        }
    }

    proptest! {
        /// From every point of the line the arc lies as near as is promised.
        #[test]
        fn an_arc_goes_through_its_points(radius in 20.0..2000.0_f64, half in 0.2..1.5_f64) {
            let steps = 240;
            let spots = on_circle(radius, -half, half, steps);
            let (_, arc) = only_arc(&piece(&spots));
            prop_assert_eq!(arc.points, steps);
            for (across, down) in spots {
                let off = (across - arc.centre.across.mm).hypot(down - arc.centre.down.mm) - arc.radius.mm;
                prop_assert!(off.abs() <= super::OFF_CIRCLE, "{}", off);
            }
            let sweep = arc.bulge.atan() * 4.0;
            prop_assert!((sweep - half * 2.0).abs() < 1e-6, "{}", sweep);
        }
    }
}
