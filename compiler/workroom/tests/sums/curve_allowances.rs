//! The cut line beside curves.
//!
//! Every panel is 40 in wide and 14 in long, with seams of half an inch unless said otherwise.

use OutlineStep::UpToHeading;
use pelmet_measure::Length;
use pelmet_model::{
    Allowance, ArcOrder, Matter, OutlineMatter, OutlineStep, PanelOrder, Point, ScallopNumber,
    Shape,
};
use pelmet_workroom::{LONGEST_POINT, mirrored};
use proptest::prelude::*;

use crate::sample::{
    alone, arc, arch, bulge, cloth, curve, eighths, from, inches, notch, outline, panel, radius,
    scallops, seams, sound, to,
};

fn shaped(half: bool, steps: &[OutlineStep], allowance: Length) -> PanelOrder {
    let mut order = PanelOrder {
        outline: outline(half, steps),
        ..panel()
    };
    order.making.face = seams(allowance);
    order
}

/// How far the cut line may be from where it belongs, in millimetres.
const EXACT_ENOUGH: f64 = 0.1;

fn between(from: Point, to: Point) -> (f64, f64) {
    (
        (to.across - from.across).as_millimetres_f64(),
        (to.down - from.down).as_millimetres_f64(),
    )
}

fn distance(point: Point, shape: &Shape) -> f64 {
    let sides = shape.sides().map(|(_, from, to)| {
        let (line, here) = (between(from, to), between(from, point));
        let part = (here.0 * line.0 + here.1 * line.1) / (line.0 * line.0 + line.1 * line.1);
        let part = part.clamp(0.0, 1.0);
        (here.0 - line.0 * part).hypot(here.1 - line.1 * part)
    });
    sides.fold(f64::INFINITY, f64::min)
}

/// The points of a line and the middles between them.
fn all_along(shape: &Shape) -> Vec<Point> {
    let sides = shape.sides();
    sides
        .flat_map(|(_, from, to)| {
            let middle = Point {
                across: (from.across + to.across).divided(2),
                down: (from.down + to.down).divided(2),
            };
            [from, middle]
        })
        .collect()
}

/// No point of the cut line is nearer to the sewn line than the allowance, and none farther but
/// where a corner is carried to its point.
fn assert_even(order: &PanelOrder, allowance: f64) {
    let made = sound(order);
    let cut = &made.pieces.first().unwrap().outline;
    assert_apart(cut);
    for point in all_along(cut) {
        let off = distance(point, &made.shape);
        assert!(off >= allowance - EXACT_ENOUGH, "{point:?} is {off} mm off");
        let beside_corner = made.shape.corners.iter().any(|corner| {
            between(corner.at, point)
                .0
                .hypot(between(corner.at, point).1)
                < allowance * 4.5
        });
        assert!(
            beside_corner || off <= allowance + EXACT_ENOUGH,
            "{point:?} is {off} mm off"
        );
    }
}

/// A micrometre or more: less says nothing of where the line goes.
fn assert_apart(shape: &Shape) {
    for (_, from, to) in shape.sides() {
        let (across, down) = between(from, to);
        assert!(across.hypot(down) > 0.000_9, "{from:?} {to:?}");
    }
}

#[test]
fn the_cut_line_keeps_its_distance_from_every_kind_of_curve() {
    for (half, steps) in [
        (
            false,
            vec![from(0, 10), arc(40, 10, bulge(4, true)), UpToHeading],
        ),
        (
            true,
            vec![
                from(0, 14),
                arc(20, 10, ArcOrder::StartingLevel),
                UpToHeading,
            ],
        ),
        (
            false,
            vec![
                from(0, 12),
                scallops((40, 12), ScallopNumber::Count(5), 2),
                UpToHeading,
            ],
        ),
        (
            false,
            vec![
                from(0, 10),
                scallops((40, 10), ScallopNumber::Count(5), 4),
                UpToHeading,
            ],
        ),
        (
            false,
            vec![
                from(0, 14),
                to(14, 14),
                arc(26, 14, bulge(6, false)),
                to(40, 14),
                UpToHeading,
            ],
        ),
        (
            false,
            vec![from(0, 14), curve((20, 14), (20, 4), (40, 4)), UpToHeading],
        ),
        // It runs smoothly on into straight cloth.
        (
            false,
            vec![
                from(0, 10),
                arc(20, 14, ArcOrder::EndingLevel),
                to(40, 14),
                UpToHeading,
            ],
        ),
        (
            true,
            vec![from(0, 14), curve((10, 14), (10, 6), (20, 6)), UpToHeading],
        ),
        (
            false,
            vec![
                from(0, 14),
                notch((10, 14), (4, 3), true),
                arc(30, 14, radius(12, false)),
                to(40, 14),
                UpToHeading,
            ],
        ),
    ] {
        for allowance in [eighths(1), eighths(3), eighths(4), eighths(8)] {
            assert_even(
                &shaped(half, &steps, allowance),
                allowance.as_millimetres_f64(),
            );
        }
    }
}

#[test]
fn a_concentric_arc_has_the_radius_of_both() {
    // An arch of radius 6 in, its allowance half an inch inside: radius 5 1/2 in.
    let made = sound(&shaped(false, &arch(), eighths(4)));
    let cut = &made.pieces[0].outline;
    let arch = cut.edges.iter().find(|edge| edge.curve.is_some()).unwrap();
    let centre = Point {
        across: inches(20),
        down: inches(14),
    };
    for point in arch.between() {
        let (across, down) = between(centre, *point);
        let radius = if point.down <= inches(14) {
            across.hypot(down)
        } else {
            across.abs()
        };
        assert!((radius - 5.5 * 25.4).abs() < 0.03, "{radius}");
    }
    // The straight edges beside it stay exact.
    let (least, most) = cut.bounds();
    assert_eq!((least.across, least.down), (-eighths(4), -eighths(4)));
    assert_eq!(
        (most.across, most.down),
        (inches(40) + eighths(4), inches(14) + eighths(4))
    );
}

#[test]
fn it_is_the_sewn_line_that_is_clipped() {
    let clipped = |shape: &Shape| {
        let curves = shape.edges.iter().filter_map(|edge| edge.curve.as_ref());
        curves
            .map(|curve| (curve.clips, curve.wedges))
            .collect::<Vec<_>>()
    };
    for (outward, down, sewn) in [(false, 14, (54, 0)), (true, 10, (0, 54))] {
        let steps = [from(0, down), arc(40, down, bulge(4, outward)), UpToHeading];
        let (made, _) = alone(&shaped(false, &steps, eighths(4)), &cloth());
        let made = made.unwrap();
        assert_eq!(clipped(&made.shape), [sewn]);
        assert_eq!(clipped(&made.pieces[0].outline), [(0, 0)]);
    }
}

/// The lower edge leaves the side so steeply that a point of cloth hangs from it. What its seams
/// would carry on for feet is cut off, whichever of the two is the wider, and whether or not the
/// side has anything taken away.
#[test]
fn a_point_between_a_side_and_a_curve_is_cut_off() {
    let steps = [from(0, 14), curve((1, 4), (5, 2), (40, 2)), UpToHeading];
    for (side, lower) in [(2, 6), (6, 2), (4, 4), (-1, 4)] {
        let mut order = shaped(false, &steps, eighths(4));
        let edges = &mut order.making.face.edges;
        edges.sides = Allowance::Seam(eighths(side));
        edges.lower = Allowance::Seam(eighths(lower));
        let (made, matters) = alone(&order, &cloth());
        assert_eq!(matters, [], "{side} {lower}");
        let cut = made.unwrap().pieces[0].outline.bounds().1.down;
        let reach = (cut - inches(14)).as_millimetres_f64();
        let most = eighths(side.max(lower)).as_millimetres_f64() * LONGEST_POINT;
        // It is cut square to its own direction, which is not quite straight down.
        assert!(reach <= most * 1.02, "{side} {lower}: {reach} mm");
    }
}

/// Two arches of half a circle each: at the sides and between them the cloth comes to a cusp, whose
/// seams run side by side and are cut off three times their width below it.
#[test]
fn a_cusp_between_arches_is_cut_off() {
    let arch = |across| arc(across, 14, bulge(10, false));
    let steps = [from(0, 14), arch(20), arch(40), UpToHeading];
    let cut = sound(&shaped(false, &steps, eighths(4)))
        .pieces
        .remove(0)
        .outline;
    let half = eighths(4);
    let corners: Vec<_> = cut.corners.iter().map(|corner| corner.at).collect();
    let lower = [
        -half,
        half,
        inches(20) - half,
        inches(20) + half,
        inches(40) - half,
        inches(40) + half,
    ];
    let expected = lower.map(|across| Point {
        across,
        down: inches(14) + half * 3,
    });
    assert_eq!(corners[1..7], expected);
}

#[test]
fn a_curve_too_tight_for_its_allowance_is_told_with_its_radius() {
    let steps = [
        from(0, 14),
        to(19, 14),
        arc(21, 14, bulge(1, false)),
        to(40, 14),
        UpToHeading,
    ];
    let (made, matters) = alone(&shaped(false, &steps, inches(2)), &cloth());
    assert_eq!(made, None);
    let [
        Matter::Outline(OutlineMatter::CurveTooTight {
            step: 2,
            radius,
            needed,
        }),
    ] = matters[..]
    else {
        panic!("{matters:?}");
    };
    assert_eq!(needed, inches(2));
    assert!(
        (radius.as_millimetres_f64() - 25.4).abs() < 0.05,
        "{radius:?}"
    );
}

#[test]
fn a_neck_between_curves_is_told_by_its_step() {
    // Two half circles of 4 in bulge into a slot 9 in wide and leave 1 in between them.
    let steps = [
        from(0, 14),
        to(15, 14),
        arc(15, 6, bulge(4, true)),
        to(24, 6),
        arc(24, 14, bulge(4, true)),
        to(40, 14),
        UpToHeading,
    ];
    assert_even(&shaped(false, &steps, eighths(3)), 9.525);
    let (made, matters) = alone(&shaped(false, &steps, eighths(6)), &cloth());
    assert_eq!(made, None);
    let too_narrow = OutlineMatter::TooNarrow {
        step: 2,
        width: inches(1),
        needed: eighths(12),
    };
    assert_eq!(matters, [Matter::from(too_narrow)]);
}

/// The cut line keeps its distance, or there is no panel and it is told why.
#[track_caller]
fn assert_even_or_refused(steps: &[OutlineStep], allowance: Length) {
    let order = shaped(false, steps, allowance);
    let (made, matters) = alone(&order, &cloth());
    assert_eq!(made.is_none(), !matters.is_empty());
    if made.is_some() {
        assert_even(&order, allowance.as_millimetres_f64());
    }
}

proptest! {
    #[test]
    fn scallops_of_any_size_are_cut_evenly_or_refused(
        count in 1_u32..30,
        depth in 1_i64..6,
        allowance in 1_i64..10,
    ) {
        let number = ScallopNumber::Count(count);
        let steps = [from(0, 14 - depth), scallops((40, 14 - depth), number, depth), UpToHeading];
        assert_even_or_refused(&steps, eighths(allowance));
    }

    #[test]
    fn any_cubic_curve_is_cut_evenly_or_refused(
        first in (0_i64..40, 0_i64..14),
        second in (0_i64..40, 0_i64..14),
        allowance in 1_i64..8,
    ) {
        let steps = [from(0, 14), curve(first, second, (40, 7)), UpToHeading];
        assert_even_or_refused(&steps, eighths(allowance));
    }

    #[test]
    fn any_arc_is_cut_evenly_or_refused(
        point in (1_i64..39, 0_i64..14),
        end in 0_i64..14,
        allowance in 1_i64..8,
    ) {
        let through = crate::sample::through(point.0, point.1);
        let steps = [from(0, 14), arc(40, end, through), UpToHeading];
        assert_even_or_refused(&steps, eighths(allowance));
    }
}

/// A lopsided panel with curves: turned over, the cut line of the lining is that of the face.
#[test]
fn the_lining_of_a_lopsided_panel_is_the_mirror_image_of_its_face() {
    let steps = [
        from(0, 10),
        curve((10, 18), (18, 10), (24, 6)),
        arc(40, 4, bulge(1, true)),
        UpToHeading,
    ];
    let mut order = shaped(false, &steps, eighths(4));
    order.lining = Some(0);
    order.making.lining = Some(order.making.face);
    let (made, _) = alone(&order, &cloth());
    let pieces = made.unwrap().pieces;
    let image = mirrored(&pieces[0].outline);
    let (own, images) = (pieces[1].outline.polygon(), image.polygon());
    assert_eq!(own.len(), images.len());
    let nanometre = Length::from_nanometres(1);
    for (own, image) in own.iter().zip(&images) {
        let (across, down) = (own.across - image.across, own.down - image.down);
        assert!(
            across.abs().max(down.abs()) <= nanometre * 2,
            "{own:?} {image:?}"
        );
    }
}

/// A tip between two arcs, and unlike allowances beside it: both moved lines still end on the point
/// that is cut off it, as far out as the larger of them asks.
#[test]
fn a_pointed_tip_of_curves_with_unlike_allowances_keeps_its_distance() {
    let steps = [
        from(0, 4),
        arc(0, 14, bulge(1, false)),
        arc(40, 4, bulge(1, false)),
        UpToHeading,
    ];
    let mut order = shaped(false, &steps, eighths(4));
    for (sides, lower) in [(2, 6), (6, 2), (4, 4)] {
        order.making.face.edges.sides = Allowance::Seam(eighths(sides));
        order.making.face.edges.lower = Allowance::Seam(eighths(lower));
        let (made, matters) = alone(&order, &cloth());
        assert_eq!(matters, []);
        let made = made.unwrap();
        let cut = &made.pieces[0].outline;
        assert_apart(cut);
        let least = eighths(sides.min(lower)).as_millimetres_f64();
        for point in all_along(cut) {
            let off = distance(point, &made.shape);
            assert!(
                off >= least - EXACT_ENOUGH,
                "{sides} {lower}: {point:?} is {off} mm off"
            );
        }
    }
}
