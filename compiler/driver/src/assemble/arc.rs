//! The arcs of circles along a line, so that a compass or a plotter can draw them as such.

use pelmet_measure::Length;
use pelmet_model::{Circle, Point};
use pelmet_packet::Arc;

use super::count::number;
use super::printer::Printer;

/// How far, in millimetres, a point of an arc may lie from its circle: as far as the line between
/// points may lie from the curve they stand for.
const OFF_CIRCLE: f64 = pelmet_workroom::FLATTENING;

/// How much farther from the circle, in millimetres, an end of the arc may lie than the points between:
/// what rounding may do, and no more.
const END_FARTHER: f64 = 0.001;

/// A point of a closed line, with what lies there.
#[derive(Copy, Clone, Debug)]
pub(crate) struct LinePoint {
    pub(crate) at: Point,
    /// Whether it lies on a curve, between two corners.
    pub(crate) on_curve: bool,
    /// The circle that curve runs along, where it is an arc.
    pub(crate) circle: Option<Circle>,
    /// The number of the corner of the panel that lies there.
    pub(crate) corner: Option<u32>,
}

/// The arcs of a closed line: for each point, the arc that begins there.
///
/// The points of one arc lie between two corners. The corners belong to it too where they lie on its
/// circle; where an allowance carries an end straight on beyond the arc, or meets the next one, they do
/// not.
pub(crate) fn arcs(points: &[LinePoint], printer: &Printer<'_>) -> Vec<Option<Arc>> {
    let mut arcs: Vec<Option<Arc>> = vec![None; points.len()];
    for (first, arc) in curves(points)
        .iter()
        .filter_map(|curve| arc_along(points, curve, printer))
    {
        if let Some(begins) = arcs.get_mut(first) {
            *begins = Some(arc);
        }
    }
    arcs
}

/// The curves of a closed line: the indices of their points, with the corner at either end.
fn curves(points: &[LinePoint]) -> Vec<Vec<usize>> {
    let mut curves: Vec<Vec<usize>> = Vec::new();
    let mut curve: Vec<usize> = Vec::new();
    let start = points.iter().position(|point| !point.on_curve).unwrap_or(0);
    let round = (start..points.len()).chain(0..=start);
    for index in round {
        curve.push(index);
        if points.get(index).is_some_and(|point| !point.on_curve) {
            curves.extend((curve.len() > 2).then(|| curve.clone()));
            curve = vec![index];
        }
    }
    curves
}

/// The arc of a curve and the index of the point at which it begins; `None` where it runs along no
/// circle, or where shrinkage has drawn the circle out of shape.
fn arc_along(points: &[LinePoint], curve: &[usize], printer: &Printer<'_>) -> Option<(usize, Arc)> {
    let [_, inner @ .., _] = curve else {
        return None;
    };
    let circle = points.get(*inner.first()?)?.circle?;
    let off = |index: &usize| Some(off_circle(circle, points.get(*index)?.at).abs());
    let farthest = inner.iter().filter_map(off).fold(0.0, f64::max);
    // Where two arcs meet, they were cut off where the straight lines between their points cross. Such
    // a corner lies inside its circle by no more than those lines do; but an arc is drawn through its
    // ends, and one so drawn would leave the line all along, not at its end alone.
    let belongs = |index: &usize| off(index).is_some_and(|off| off <= farthest + END_FARTHER);
    let along: Vec<usize> = curve.iter().copied().filter(belongs).collect();
    let (first, last) = (*along.first()?, *along.last()?);
    let arc = Arc {
        points: number(along.len().checked_sub(1).filter(|steps| *steps > 0)?),
        centre: printer.place(circle.centre.across, circle.centre.down),
        radius: printer.mark(circle.radius),
        bulge: (swept(circle, points.get(first)?.at, points.get(last)?.at) / 4.0).tan(),
    };
    (farthest <= OFF_CIRCLE).then_some((first, arc))
}

/// How far outside a circle a point lies, in millimetres.
fn off_circle(circle: Circle, point: Point) -> f64 {
    let (across, down) = from_centre(circle, point);
    across.hypot(down) - circle.radius.as_millimetres_f64()
}

/// The angle an arc turns through from its start to its end, positive where it bends away from the
/// cloth; the cloth lies on the left of the line.
fn swept(circle: Circle, start: Point, end: Point) -> f64 {
    let (from, to) = (from_centre(circle, start), from_centre(circle, end));
    let turn = -(from.0 * to.1 - from.1 * to.0).atan2(from.0 * to.0 + from.1 * to.1);
    let whole = std::f64::consts::TAU;
    if circle.swells {
        turn.rem_euclid(whole)
    } else {
        turn.rem_euclid(whole) - whole
    }
}

fn from_centre(circle: Circle, point: Point) -> (f64, f64) {
    let millimetres = |length: Length| length.as_millimetres_f64();
    (
        millimetres(point.across - circle.centre.across),
        millimetres(point.down - circle.centre.down),
    )
}

#[cfg(test)]
#[expect(
    clippy::arithmetic_side_effects,
    reason = "the points of a test are few"
)]
mod tests {
    use pelmet_measure::{Length, Style};
    use pelmet_model::{Circle, Point};
    use pelmet_packet::Arc;
    use proptest::prelude::*;

    use super::{LinePoint, OFF_CIRCLE, arcs, off_circle};
    use crate::assemble::printer::Printer;

    const PRINTER: Printer<'_> = Printer {
        style: Style::METRIC,
        currency: None,
    };

    fn point(across: f64, down: f64) -> Point {
        let length = |mm| Length::from_millimetres_f64(mm).unwrap();
        Point {
            across: length(across),
            down: length(down),
        }
    }

    /// A piece whose lower edge runs over these points, from its left side to its right one.
    fn piece(curve: &[Point], circle: Option<Circle>) -> Vec<LinePoint> {
        let last = curve.len() - 1;
        let line = |index: usize, at: Point| LinePoint {
            at,
            on_curve: index > 0 && index < last,
            circle: circle.filter(|_| index > 0 && index < last),
            corner: None,
        };
        let side = |at: Point| {
            line(
                0,
                Point {
                    down: -Length::METRE,
                    ..at
                },
            )
        };
        let mut points = vec![side(curve[0])];
        points.extend(curve.iter().enumerate().map(|(index, at)| line(index, *at)));
        points.push(side(curve[last]));
        points
    }

    /// Points on a circle about (0, 0), by their angles from straight down toward the right.
    fn on_circle(radius: f64, from: f64, to: f64, steps: u32) -> (Vec<Point>, Circle) {
        let angle = |step: u32| from + (to - from) * f64::from(step) / f64::from(steps);
        let angles = (0..=steps).map(angle);
        let points = angles.map(|angle| point(radius * angle.sin(), radius * angle.cos()));
        let circle = Circle {
            centre: point(0.0, 0.0),
            radius: Length::from_millimetres_f64(radius).unwrap(),
            swells: true,
        };
        (points.collect(), circle)
    }

    fn only_arc(points: &[LinePoint]) -> (usize, Arc) {
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
        let (curve, circle) = on_circle(80.0, -quarter, quarter, 90);
        let (first, arc) = only_arc(&piece(&curve, Some(circle)));
        assert_eq!((first, arc.points), (1, 90));
        assert!((arc.bulge - 1.0).abs() < 1e-6, "{}", arc.bulge);
        assert!((arc.radius.mm - 80.0).abs() < 1e-9, "{}", arc.radius.mm);
        assert!(arc.centre.down.mm.abs() < 1e-9, "{}", arc.centre.down.mm);
    }

    #[test]
    fn a_hollow_has_a_bulge_below_nothing() {
        let (mut hollow, circle) = on_circle(80.0, -0.7, 0.7, 40);
        for point in &mut hollow {
            point.down = -point.down;
        }
        let circle = Circle {
            swells: false,
            ..circle
        };
        let (_, arc) = only_arc(&piece(&hollow, Some(circle)));
        let expected = -(1.4_f64 / 4.0).tan();
        assert!((arc.bulge - expected).abs() < 1e-6, "{}", arc.bulge);
    }

    /// An allowance carries the corners on beyond the ends of an arc.
    #[test]
    fn straight_ends_are_no_part_of_an_arc() {
        let (mut curve, circle) = on_circle(120.0, -0.8, 0.8, 40);
        let first = curve[0];
        curve.insert(0, point(first.across.as_millimetres_f64() - 9.0, 82.0));
        curve.push(Point {
            across: -first.across + Length::millimetres(9),
            ..first
        });
        let (first, arc) = only_arc(&piece(&curve, Some(circle)));
        assert_eq!((first, arc.points), (2, 40));
    }

    /// Where the allowances of two arcs meet, the corner lies between two points of either, a little
    /// inside its circle.
    #[test]
    fn a_corner_where_two_arcs_meet_is_no_part_of_either() {
        let (mut curve, circle) = on_circle(120.0, -0.8, 0.8, 40);
        curve[0] = point(120.02 * (-0.8_f64).sin() + 0.02, 119.98 * 0.8_f64.cos());
        let off = off_circle(circle, curve[0]);
        assert!(off < -0.01 && off > -OFF_CIRCLE, "{off}");
        let (first, arc) = only_arc(&piece(&curve, Some(circle)));
        assert_eq!((first, arc.points), (2, 39));
    }

    /// Cloth that shrinks more one way than the other is cut from no circle.
    #[test]
    fn what_leaves_its_circle_or_has_none_is_no_arc() {
        let (mut curve, circle) = on_circle(120.0, -0.8, 0.8, 40);
        assert!(
            arcs(&piece(&curve, None), &PRINTER)
                .iter()
                .all(Option::is_none)
        );
        curve[20].down += Length::millimetres(1);
        let drawn_out = arcs(&piece(&curve, Some(circle)), &PRINTER);
        assert!(drawn_out.iter().all(Option::is_none), "{drawn_out:?}");
    }

    proptest! {
        /// The angle that an arc turns through is the one it was drawn by.
        #[test]
        fn an_arc_turns_as_far_as_it_was_drawn(radius in 20.0..2000.0_f64, half in 0.2..3.0_f64) {
            let (curve, circle) = on_circle(radius, -half, half, 240);
            let (_, arc) = only_arc(&piece(&curve, Some(circle)));
            prop_assert_eq!(arc.points, 240);
            let sweep = arc.bulge.atan() * 4.0;
            prop_assert!((sweep - half * 2.0).abs() < 1e-6, "{}", sweep);
        }
    }
}
