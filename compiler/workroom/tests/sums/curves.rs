//! Curves held to closed forms: the circle, the parabola, the quarter of an ellipse.
//!
//! Every panel is 40 in wide and 14 in long. Lengths of closed forms are in inches.

use std::f64::consts::PI;

use OutlineStep::UpToHeading;
use pelmet_measure::Length;
use pelmet_model::{
    ArcFault, ArcOrder, EdgeKind, Marked, Matter, OutlineLimit, OutlineMatter, OutlineStep,
    PanelOrder, Point, Proportion, Relief, ScallopNumber, Shape,
};
use pelmet_workroom::{FLATTENING, MAXIMUM_CORNERS, has_like_halves};

use crate::sample::{
    alone, arc, arch, bulge, by, cloth, curve, from, inches, notch, outline, panel, radius,
    scallops, sound, through, to,
};

fn shaped(half: bool, steps: &[OutlineStep]) -> PanelOrder {
    PanelOrder {
        outline: outline(half, steps),
        ..panel()
    }
}

/// The shape, whose points lie far enough apart for the lines between them to go somewhere.
fn drawn(half: bool, steps: &[OutlineStep]) -> Shape {
    let shape = sound(&shaped(half, steps)).shape;
    assert_apart(&shape);
    shape
}

fn assert_apart(shape: &Shape) {
    for (_, from, to) in shape.sides() {
        let across = (to.across - from.across).as_millimetres_f64();
        let apart = across.hypot((to.down - from.down).as_millimetres_f64());
        assert!(apart > 0.000_9, "{from:?} {to:?}");
    }
}

fn matter(half: bool, steps: &[OutlineStep]) -> Vec<Matter> {
    alone(&shaped(half, steps), &cloth()).1
}

fn in_inches(length: Length) -> f64 {
    length.as_millimetres_f64() / 25.4
}

fn near(one: f64, other: f64, within: f64) -> bool {
    (one - other).abs() <= within
}

/// Area of the shape in square inches.
fn area(shape: &Shape) -> f64 {
    let points = shape.polygon();
    let next = points.iter().cycle().skip(1);
    let doubled: f64 = points
        .iter()
        .zip(next)
        .map(|(one, other)| {
            in_inches(one.across) * in_inches(other.down)
                - in_inches(one.down) * in_inches(other.across)
        })
        .sum();
    (doubled / 2.0).abs()
}

/// The whole panel less what an arc leaves out: sagitta, radius and arc length of a circle through
/// the ends of a 40 in chord.
#[test]
fn an_arc_is_part_of_a_circle() {
    // A chord of 40 in with a sagitta of 4 in: radius (20^2 + 4^2) / 8 = 52 in.
    let half_angle = (20.0_f64 / 52.0).asin();
    let length = 2.0 * 52.0 * half_angle;
    let segment = 52.0 * 52.0 * (half_angle - half_angle.sin() * half_angle.cos());
    for (name, order, outward) in [
        ("through its middle", through(20, 14), true),
        ("by bulge", bulge(4, true), true),
        ("by radius", radius(52, true), true),
        ("through, inward", through(20, 6), false),
        ("by bulge inward", bulge(4, false), false),
        ("by radius inward", radius(52, false), false),
    ] {
        let shape = drawn_to_the_drop(order, outward);
        let edge = &shape.edges[1];
        assert_eq!(edge.kind, EdgeKind::Lower);
        assert!(near(in_inches(edge.length), length, 1e-7), "{name}");
        let expected = 400.0 + if outward { segment } else { -segment };
        assert!(
            near(area(&shape), expected, 0.03),
            "{name}: {}",
            area(&shape)
        );
        let (centre, sign) = if outward {
            (14.0 - 52.0, 1.0)
        } else {
            (6.0 + 52.0, -1.0)
        };
        for point in edge.between() {
            let (across, down) = (
                in_inches(point.across) - 20.0,
                in_inches(point.down) - centre,
            );
            assert!(near(across.hypot(down), 52.0, 1e-7), "{name}");
            assert!(down * sign > 0.0);
        }
        assert!(sides_stay_near(&shape, |point| {
            let (across, down) = (
                in_inches(point.across) - 20.0,
                in_inches(point.down) - centre,
            );
            (across.hypot(down) - 52.0).abs() * 25.4
        }));
        assert_eq!(shape.bounds().1.down, inches(if outward { 14 } else { 10 }));
    }
}

/// From (0, 10) to (40, 10); where it swells inward, a notch of a step beside it reaches the drop.
fn drawn_to_the_drop(order: ArcOrder, outward: bool) -> Shape {
    let steps = [from(0, 10), arc(40, 10, order), UpToHeading];
    let made = alone(&shaped(false, &steps), &cloth());
    let short = Matter::from(OutlineMatter::ShortOfDrop { amount: inches(4) });
    assert_eq!(made.1, if outward { vec![] } else { vec![short] });
    made.0.unwrap().shape
}

/// Whether the middle of every side of every curve is as near as the flattening says.
fn sides_stay_near(shape: &Shape, off: impl Fn(Point) -> f64) -> bool {
    let curved = shape.sides().filter(|(edge, ..)| edge.curve.is_some());
    curved.into_iter().all(|(_, from, to)| {
        off(Point {
            across: (from.across + to.across).divided(2),
            down: (from.down + to.down).divided(2),
        }) <= FLATTENING + 1e-6
    })
}

#[test]
fn an_arc_by_compass_is_level_where_it_starts_or_ends() {
    // The compass stands 52 in above the lowest point: 20 in out, the arc has risen by 4 in.
    let half_angle = (20.0_f64 / 52.0).asin();
    let starting = drawn(
        true,
        &[
            from(0, 14),
            arc(20, 10, ArcOrder::StartingLevel),
            UpToHeading,
        ],
    );
    // Both halves are one curve, for it goes smoothly over the fold.
    assert_eq!(starting.corners.len(), 4);
    assert!(near(
        in_inches(starting.edges[1].length),
        2.0 * 52.0 * half_angle,
        1e-7
    ));
    assert_eq!(starting.bounds().1.down, inches(14));
    assert!(has_like_halves(&starting));
    let ending = drawn(
        false,
        &[
            from(0, 10),
            arc(20, 14, ArcOrder::EndingLevel),
            to(40, 14),
            UpToHeading,
        ],
    );
    assert_eq!(ending.corners.len(), 5);
    assert_eq!(ending.corners[2].relief, None);
    assert!(near(
        in_inches(ending.edges[1].length),
        52.0 * half_angle,
        1e-7
    ));
    assert!(!has_like_halves(&ending));
}

#[test]
fn a_half_circle_has_no_corner_at_its_top() {
    let shape = drawn(false, &arch());
    let arch = &shape.edges[2];
    assert!(near(in_inches(arch.length), 6.0 * PI, 1e-7));
    assert!(near(area(&shape), 40.0 * 14.0 - 18.0 * PI, 0.01));
    assert!(has_like_halves(&shape));
    // Its highest point is one of its points, exactly.
    let top = arch.between().iter().map(|point| point.down).min();
    assert_eq!(top, Some(inches(8)));
    // Convex where the arch begins, and concave all along.
    assert_eq!(shape.corners[2].relief, Some(Relief::Trim));
    let curve = arch.curve.as_ref().unwrap();
    assert_eq!((curve.clips, curve.wedges), (25, 0));
}

/// A keyhole: chord 6 in, the far point 9 in above it: radius (9 + 81) / 18 = 5 in.
fn keyhole() -> [OutlineStep; 5] {
    [
        from(0, 14),
        to(17, 14),
        arc(23, 14, through(20, 5)),
        to(40, 14),
        UpToHeading,
    ]
}

#[test]
fn an_arc_may_be_more_than_half_a_circle() {
    let edge = &drawn(false, &keyhole()).edges[2];
    let sweep = 2.0 * (PI - (3.0_f64 / 5.0).asin());
    assert!(near(in_inches(edge.length), 5.0 * sweep, 1e-7));
}

#[test]
fn a_cubic_curve_can_be_a_parabola() {
    // The cubic form of a parabola that starts level at (0, 14) and rises 4 in over 20 in: its
    // middle control point is (10, 14), and the cubic's are two thirds of the way there.
    let third =
        |whole: i64, part: i64| Proportion::fixed(Length::inch_fraction(whole * 3 + part, 3));
    let steps = [
        from(0, 14),
        OutlineStep::CurveTo {
            across: Proportion::fixed(inches(20)),
            down: Proportion::fixed(inches(10)),
            first: (third(6, 2), Proportion::fixed(inches(14))),
            second: (third(13, 1), third(12, 2)),
        },
        UpToHeading,
    ];
    let shape = drawn(true, &steps);
    let rise = |across: f64| 4.0 * (across / 20.0).powi(2);
    for point in shape.edges[1].between() {
        let expected = 14.0 - rise(in_inches(point.across) - 20.0);
        assert!(near(in_inches(point.down), expected, 1e-6));
    }
    // Arc length of y = a x^2: x/2 sqrt(1 + 4a^2x^2) + asinh(2ax) / 4a.
    let a: f64 = 4.0 / 400.0;
    let length =
        10.0 * (1.0 + (2.0 * a * 20.0).powi(2)).sqrt() + (2.0 * a * 20.0).asinh() / (4.0 * a);
    assert!(near(in_inches(shape.edges[1].length), 2.0 * length, 1e-6));
    // The area under it is a third of its rectangle.
    assert!(near(area(&shape), 400.0 + 160.0 * 2.0 / 3.0, 0.03));
    assert_eq!(shape.corners.len(), 4);
}

#[test]
fn a_cubic_curve_comes_near_to_the_quarter_of_an_ellipse() {
    // Half axes 20 in and 4 in. The usual control points keep within 3 parts in 10 000 of it.
    const KAPPA: f64 = 0.552_284_749_830_793_4;
    let length =
        |inches: f64| Proportion::fixed(Length::from_millimetres_f64(inches * 25.4).unwrap());
    let steps = [
        from(0, 14),
        OutlineStep::CurveTo {
            across: length(20.0),
            down: length(10.0),
            first: (length(20.0 * KAPPA), length(14.0)),
            second: (length(20.0), length(10.0 + 4.0 * KAPPA)),
        },
        UpToHeading,
    ];
    let shape = drawn(true, &steps);
    for point in shape.edges[1].between() {
        let (across, down) = (
            (in_inches(point.across) - 20.0) / 20.0,
            (in_inches(point.down) - 10.0) / 4.0,
        );
        assert!(near(across.hypot(down), 1.0, 3e-4));
    }
    // Half the circumference of the ellipse, by summing it in a million parts.
    let parts = 1_000_000;
    let step = PI / f64::from(parts);
    let around: f64 = (0..parts)
        .map(|part| {
            let turn = (f64::from(part) + 0.5) * step;
            (20.0 * turn.sin()).hypot(4.0 * turn.cos()) * step
        })
        .sum();
    assert!(near(
        in_inches(shape.edges[1].length),
        around,
        around * 3e-4
    ));
    assert!(near(area(&shape), 400.0 + PI * 20.0 * 4.0 / 2.0, 0.1));
    // It comes up to the side without a corner.
    assert_eq!(shape.corners[1].relief, None);
}

#[test]
fn scallops_are_equal_and_counted_or_measured() {
    for (number, count) in [
        (ScallopNumber::Count(5), 5),
        (ScallopNumber::About(Proportion::fixed(inches(8))), 5),
        (ScallopNumber::About(Proportion::fixed(inches(9))), 4),
        (ScallopNumber::About(Proportion::fixed(inches(100))), 1),
        (ScallopNumber::Count(1), 1),
    ] {
        let shape = drawn(
            false,
            &[from(0, 12), scallops((40, 12), number, 2), UpToHeading],
        );
        assert_eq!(shape.corners.len(), count + 3);
        let lower = &shape.edges[1..=count];
        let wide = 40.0 / f64::from(u32::try_from(count).unwrap());
        let arc_radius = (wide * wide / 4.0 + 4.0) / 4.0;
        let length = 4.0 * arc_radius * (4.0 / wide).atan();
        for edge in lower {
            assert_eq!(edge.kind, EdgeKind::Lower);
            assert!(near(in_inches(edge.length), length, 1e-6));
            assert_eq!(edge.step, Some(1));
        }
        // Where two scallops meet, the panel is snipped.
        for corner in &shape.corners[2..=count] {
            assert_eq!(
                (corner.relief, corner.at.down),
                (Some(Relief::Snip), inches(12))
            );
        }
        assert_eq!(shape.bounds().1.down, inches(14));
        assert!(has_like_halves(&shape));
    }
}

#[test]
fn scallops_follow_a_slanted_line() {
    let steps = [
        from(0, 6),
        to(8, 6),
        scallops((40, 10), ScallopNumber::Count(4), 1),
        UpToHeading,
    ];
    let (made, _) = alone(&shaped(false, &steps), &cloth());
    let corners = made.unwrap().shape.corners;
    let cusps: Vec<_> = corners[2..=6].iter().map(|corner| corner.at).collect();
    let expected = [0, 1, 2, 3, 4].map(|number| Point {
        across: inches(8 + 8 * number),
        down: inches(6 + number),
    });
    assert_eq!(cusps, expected);
}

#[test]
fn what_cannot_be_drawn_is_told_by_its_step() {
    let no_arc = |fault| vec![Matter::from(OutlineMatter::NoArc { step: 1, fault })];
    let no_length = vec![Matter::from(OutlineMatter::NoLength { step: 1 })];
    for (steps, expected) in [
        (
            vec![from(0, 14), arc(40, 14, radius(19, true)), UpToHeading],
            no_arc(ArcFault::RadiusTooSmall {
                radius: inches(19),
                least: inches(20),
            }),
        ),
        (
            vec![from(0, 14), arc(40, 14, through(50, 14)), UpToHeading],
            no_arc(ArcFault::ThroughInLine),
        ),
        (
            vec![
                from(0, 14),
                arc(0, 10, ArcOrder::StartingLevel),
                to(40, 10),
                UpToHeading,
            ],
            no_arc(ArcFault::StraightUp),
        ),
        (
            vec![
                from(0, 14),
                arc(0, 14, bulge(1, true)),
                to(40, 14),
                UpToHeading,
            ],
            no_length.clone(),
        ),
        (
            vec![
                from(0, 14),
                scallops((40, 14), ScallopNumber::Count(3), 0),
                UpToHeading,
            ],
            no_length.clone(),
        ),
        (
            vec![
                from(0, 14),
                curve((0, 14), (0, 14), (0, 14)),
                to(40, 14),
                UpToHeading,
            ],
            no_length,
        ),
    ] {
        assert_eq!(matter(false, &steps), expected, "{steps:?}");
    }
}

#[test]
fn a_curve_that_leaves_the_panel_is_told_by_its_step() {
    let outside = |amount, side, limit| {
        vec![Matter::from(OutlineMatter::OutsideSize {
            step: 1,
            amount,
            beyond: side,
            limit,
        })]
    };
    for (steps, expected) in [
        (
            vec![from(0, 14), arc(40, 14, bulge(1, true)), UpToHeading],
            outside(inches(1), OutlineLimit::Drop, inches(14)),
        ),
        (
            vec![from(0, 14), arc(40, 14, bulge(15, false)), UpToHeading],
            outside(inches(1), OutlineLimit::HeadingLine, Length::ZERO),
        ),
        (
            vec![
                from(0, 14),
                scallops((40, 14), ScallopNumber::Count(4), 1),
                UpToHeading,
            ],
            outside(inches(1), OutlineLimit::Drop, inches(14)),
        ),
        (
            vec![
                from(0, 14),
                scallops((40, 14), ScallopNumber::Count(3_000), 1),
                UpToHeading,
            ],
            outside(inches(1), OutlineLimit::Drop, inches(14)),
        ),
    ] {
        assert_eq!(matter(false, &steps), expected, "{steps:?}");
    }
}

#[test]
fn many_scallops_stop_at_the_limit() {
    let (down, depth) = (inches(13), Length::inch_fraction(1, 256));
    let tiny = OutlineStep::Scallops {
        across: Proportion::fixed(inches(40)),
        down: Proportion::fixed(down),
        number: ScallopNumber::Count(3_000),
        depth: Proportion::fixed(depth),
        outward: true,
    };
    let steps = [from(0, 13), tiny, UpToHeading];
    let limit = MAXIMUM_CORNERS;
    assert_eq!(
        matter(false, &steps),
        [Matter::from(OutlineMatter::TooManyCorners { limit })]
    );
}

#[test]
fn a_curve_that_crosses_itself_or_another_edge_is_found() {
    let crosses =
        |first, second| vec![Matter::from(OutlineMatter::CrossesItself { first, second })];
    for (steps, expected) in [
        // A loop.
        (
            vec![
                from(0, 14),
                to(15, 14),
                curve((40, 2), (0, 2), (25, 14)),
                to(40, 14),
                UpToHeading,
            ],
            crosses(2, 2),
        ),
        // An arch that runs into a notch beside it.
        (
            vec![
                from(0, 14),
                notch((8, 14), (4, 10), true),
                arc(20, 14, bulge(9, false)),
                to(40, 14),
                UpToHeading,
            ],
            crosses(1, 2),
        ),
    ] {
        assert_eq!(matter(false, &steps), expected, "{steps:?}");
    }
}

#[test]
fn an_arc_through_a_point_in_line_is_straight() {
    let shape = drawn(
        false,
        &[from(0, 14), arc(40, 14, through(9, 14)), UpToHeading],
    );
    assert_eq!(shape.corners.len(), 4);
    assert_eq!(shape.edges[1].curve, None);
}

#[test]
fn a_point_keeps_its_name_on_both_halves_and_in_the_marks() {
    let mut order = shaped(
        true,
        &[from(0, 14), to(10, 14), to(15, 14), by(5, -4), UpToHeading],
    );
    order.outline.names = [(0, String::from("middle")), (1, String::from("tie"))].into();
    let made = sound(&order);
    let named: Vec<_> = made
        .shape
        .corners
        .iter()
        .filter_map(|corner| Some((corner.name.as_deref()?, corner.at.across, corner.relief)))
        .collect();
    let straight_on = None;
    assert_eq!(
        named,
        [
            ("tie", inches(10), straight_on),
            ("middle", inches(20), straight_on),
            ("tie", inches(30), straight_on),
        ]
    );
    let marks = made.marks.iter().filter_map(|mark| match &mark.what {
        Marked::Corner {
            name: Some(name), ..
        } => Some(name.as_str()),
        _ => None,
    });
    assert_eq!(marks.collect::<Vec<_>>(), ["tie", "middle", "tie"]);
}

#[test]
fn every_curve_is_marked_at_its_middle() {
    let made = sound(&shaped(
        false,
        &[
            from(0, 12),
            scallops((40, 12), ScallopNumber::Count(2), 2),
            UpToHeading,
        ],
    ));
    let marks: Vec<_> = made
        .marks
        .iter()
        .filter_map(|mark| match mark.what {
            Marked::Curve {
                from,
                to,
                clips,
                wedges,
            } => Some(((from, to), mark.across, mark.down, (clips, wedges))),
            _ => None,
        })
        .collect();
    let (down, wedges) = (Some(inches(14)), (0, 27));
    assert_eq!(
        marks,
        [
            ((2, 3), inches(10), down, wedges),
            ((3, 4), inches(30), down, wedges)
        ]
    );
}

/// A circle of 5 in about (20, 9): where an arc of it runs level or upright it has a point, so that
/// its extent is exact, whichever way round it is drawn.
#[test]
fn an_arc_reaches_just_as_far_as_its_circle() {
    let drop_shaped = [
        from(0, 5),
        to(17, 5),
        arc(23, 5, through(20, 14)),
        to(40, 5),
        UpToHeading,
    ];
    let (left, right) = (inches(15), inches(25));
    for (steps, middle, tip) in [(keyhole(), 10, 5), (drop_shaped, 9, 14)] {
        let shape = drawn(false, &steps);
        let points = shape.edges[2].between();
        for (across, down) in [
            (left, inches(middle)),
            (right, inches(middle)),
            (inches(20), inches(tip)),
        ] {
            assert!(
                points.contains(&Point { across, down }),
                "{across:?} {down:?}"
            );
        }
        let across: Vec<Length> = points.iter().map(|point| point.across).collect();
        assert_eq!(
            (across.iter().min(), across.iter().max()),
            (Some(&left), Some(&right))
        );
        // It goes round once: the points follow one another along the circle.
        for (one, next) in points.iter().zip(&points[1..]) {
            let way = in_inches(next.across - one.across).hypot(in_inches(next.down - one.down));
            assert!(way < 0.3, "{one:?} {next:?}");
        }
    }
}

#[test]
fn an_arc_may_be_just_half_a_circle_by_its_radius() {
    let steps = |order| {
        [
            from(0, 14),
            to(14, 14),
            arc(26, 14, order),
            to(40, 14),
            UpToHeading,
        ]
    };
    let half = |order| drawn(false, &steps(order)).edges[2].length;
    assert!(near(in_inches(half(radius(6, false))), 6.0 * PI, 1e-7));
}

/// To the left by 10 in and up by 6: level at one end, the circle stands (100 + 36) / 12 in off it.
#[test]
fn an_arc_by_compass_may_run_to_the_left() {
    let circle = 34.0 / 3.0;
    let up_to = |order, (across, down)| {
        let arc = arc(across, down, order);
        [arc, to(20, 4), to(40, 4), UpToHeading]
    };
    let ending = up_to(ArcOrder::EndingLevel, (20, 8));
    let starting = up_to(ArcOrder::StartingLevel, (20, 6));
    for (before, after, centre) in [
        (vec![from(0, 14), to(30, 14)], ending, (20.0, 8.0 + circle)),
        (
            vec![from(0, 14), to(30, 14), to(30, 12)],
            starting,
            (30.0, 12.0 - circle),
        ),
    ] {
        let shape = drawn(false, &[before, after.to_vec()].concat());
        let curved = shape
            .edges
            .iter()
            .find(|edge| edge.curve.is_some())
            .unwrap();
        let half_angle = (10.0_f64.hypot(6.0) / 2.0 / circle).asin();
        assert!(near(
            in_inches(curved.length),
            2.0 * circle * half_angle,
            1e-7
        ));
        for point in curved.between() {
            let (across, down) = (in_inches(point.across), in_inches(point.down));
            let off = (across - centre.0).hypot(down - centre.1);
            assert!(near(off, circle, 1e-7), "{point:?}");
        }
    }
}

#[test]
fn an_arc_through_a_point_in_line_is_straight_on_a_slant_too() {
    for (run, rise) in [(39, 13), (30, 10), (36, 12), (27, 9), (33, 11)] {
        for part in 1..rise {
            let across = run * part / rise;
            let order = through(across, 14 - part);
            let steps = [
                from(0, 14),
                arc(run, 14 - rise, order),
                to(40, 14 - rise),
                UpToHeading,
            ];
            let shape = drawn(false, &steps);
            assert!(
                shape.edges.iter().all(|edge| edge.curve.is_none()),
                "{run} {part}"
            );
        }
    }
}

/// Its second control point lies on its end: it comes from the first, which is straight below.
#[test]
fn a_cubic_curve_without_a_second_control_comes_from_its_first() {
    let shape = drawn(
        false,
        &[from(0, 14), curve((40, 14), (40, 9), (40, 9)), UpToHeading],
    );
    assert_eq!(shape.corners[2].relief, None);
}

#[test]
fn scallops_may_swell_inward() {
    let mut steps = [
        from(0, 14),
        scallops((40, 14), ScallopNumber::Count(4), 3),
        UpToHeading,
    ];
    if let OutlineStep::Scallops { outward, .. } = &mut steps[1] {
        *outward = false;
    }
    let shape = drawn(false, &steps);
    let highest = |edge: &pelmet_model::Edge| edge.between().iter().map(|point| point.down).min();
    for edge in &shape.edges[1..=4] {
        assert_eq!(highest(edge), Some(inches(11)));
    }
    for corner in &shape.corners[2..=4] {
        assert_eq!(corner.relief, Some(Relief::Trim));
    }
}

/// The lowest point of an arc is reckoned in floating point; off the drop by a few nanometres it
/// lies on it.
#[test]
fn an_arc_that_swells_just_to_the_drop_is_inside() {
    for eighths_down in (17..104).step_by(6) {
        let down = Length::inch_fraction(eighths_down, 8);
        let at = |across| (Proportion::fixed(inches(across)), Proportion::fixed(down));
        let bulge = Proportion::fixed(inches(14) - down);
        let ((left, level), (right, _)) = (at(0), at(40));
        let steps = [
            OutlineStep::From {
                across: left,
                down: level,
            },
            OutlineStep::ArcTo {
                across: right,
                down: level,
                arc: ArcOrder::Bulge {
                    bulge,
                    outward: true,
                },
            },
            UpToHeading,
        ];
        assert_eq!(drawn(false, &steps).bounds().1.down, inches(14));
    }
}

/// Down the side of a slot: the curve stands furthest out half way, at a point of its own.
#[test]
fn an_arc_down_a_side_reaches_just_as_far_as_its_bulge() {
    for (bulge_in_inches, outward) in [(1, false), (1, true), (2, false), (2, true), (3, true)] {
        let steps = [
            from(0, 4),
            to(20, 4),
            arc(20, 12, bulge(bulge_in_inches, outward)),
            to(20, 14),
            to(40, 14),
            UpToHeading,
        ];
        let shape = drawn(false, &steps);
        let curved = shape
            .edges
            .iter()
            .find(|edge| edge.curve.is_some())
            .unwrap();
        // The panel lies on the right of the slot.
        let across = inches(if outward {
            20 - bulge_in_inches
        } else {
            20 + bulge_in_inches
        });
        let furthest = Point {
            across,
            down: inches(8),
        };
        assert!(
            curved.between().contains(&furthest),
            "{bulge_in_inches} {outward}"
        );
    }
}

/// It stands still for a moment half way and turns back: a cusp, 14 in down. No allowance follows
/// it round, so there is none.
#[test]
fn a_cubic_curve_may_come_to_a_cusp() {
    let steps = [from(0, 8), curve((40, 16), (0, 16), (40, 8)), UpToHeading];
    let mut order = shaped(false, &steps);
    order.making.face = crate::sample::seams(Length::ZERO);
    let shape = sound(&order).shape;
    let cusp = Point {
        across: inches(20),
        down: inches(14),
    };
    let points = shape.edges[1].between();
    assert_eq!(points.iter().filter(|point| **point == cusp).count(), 1);
    assert_apart(&shape);
}

/// Sizes worked out as shares are rounded one by one, and their sum is a few nanometres out.
#[test]
fn a_curve_may_be_out_by_its_rounding() {
    let swelling = |over: i64| {
        let bulge = Proportion::fixed(inches(1) + Length::from_nanometres(over));
        let swell = ArcOrder::Bulge {
            bulge,
            outward: true,
        };
        shaped(false, &[from(0, 13), arc(40, 13, swell), UpToHeading])
    };
    for over in [0, 1, 10] {
        let shape = sound(&swelling(over)).shape;
        assert_eq!(shape.bounds().1.down, inches(14), "{over}");
    }
    let (_, matters) = alone(&swelling(11), &cloth());
    assert!(
        matches!(
            matters[..],
            [Matter::Outline(OutlineMatter::OutsideSize { .. })]
        ),
        "{matters:?}"
    );
}

/// Half circles side by side meet in a cusp: between two that hang down the cloth is snipped, and
/// the tip between two arches is trimmed.
#[test]
fn a_cusp_between_half_circles_is_snipped_or_trimmed_by_the_side_it_points_to() {
    for (down, outward, relief) in [
        (4, true, Some(Relief::Snip)),
        (14, false, Some(Relief::Trim)),
    ] {
        let half_circle = |across| arc(across, down, bulge(10, outward));
        let steps = [from(0, down), half_circle(20), half_circle(40), UpToHeading];
        let mut order = shaped(false, &steps);
        order.making.face = crate::sample::seams(Length::ZERO);
        assert_eq!(sound(&order).shape.corners[2].relief, relief, "{outward}");
    }
}
