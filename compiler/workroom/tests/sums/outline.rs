//! Outlines drawn at a width: their corners and edges, and what is wrong with them.

use OutlineStep::UpToHeading;
use pelmet_measure::{Area, Length};
use pelmet_model::{
    ArcOrder, EdgeKind, Heading, Matter, Outline, OutlineLimit, OutlineMatter, OutlineStep,
    PanelOrder, Proportion, Relief, Shape,
};
use pelmet_workroom::{MAXIMUM_CORNERS, has_like_halves};

use crate::sample::{
    alone, arc, bulge, by, cloth, curve, exactly, from, inches, notch, outline, panel, ratio,
    sound, to,
};

fn shaped(outline: Outline) -> PanelOrder {
    PanelOrder { outline, ..panel() }
}

fn corners(shape: &Shape) -> Vec<(Length, Length)> {
    shape
        .corners
        .iter()
        .map(|corner| (corner.at.across, corner.at.down))
        .collect()
}

fn in_inches(points: &[(i64, i64)]) -> Vec<(Length, Length)> {
    points
        .iter()
        .map(|&(across, down)| (inches(across), inches(down)))
        .collect()
}

/// The corners of each outline, on a panel of 40 in by 14 in.
#[track_caller]
fn assert_corners(cases: &[(Outline, &[(i64, i64)])]) {
    for (outline, expected) in cases {
        let made = sound(&shaped(outline.clone()));
        assert_eq!(corners(&made.shape), in_inches(expected), "{outline:?}");
        assert_eq!(made.shape.edges.len(), expected.len());
    }
}

#[test]
fn steps_become_corners_from_the_top_left_round() {
    let cases: &[(Outline, &[(i64, i64)])] = &[
        (
            Outline::straight(inches(14)),
            &[(0, 0), (0, 14), (40, 14), (40, 0)],
        ),
        // A corner in the middle of a straight edge is none.
        (
            outline(false, &[from(0, 14), to(9, 14), to(40, 14), UpToHeading]),
            &[(0, 0), (0, 14), (40, 14), (40, 0)],
        ),
        // Half: level at the fold, a step up at the side.
        (
            outline(
                true,
                &[from(0, 14), to(14, 14), to(14, 10), to(20, 10), UpToHeading],
            ),
            &[
                (0, 0),
                (0, 10),
                (6, 10),
                (6, 14),
                (34, 14),
                (34, 10),
                (40, 10),
                (40, 0),
            ],
        ),
        // Half: a point at the fold.
        (
            outline(true, &[from(0, 14), to(20, 10), UpToHeading]),
            &[(0, 0), (0, 10), (20, 14), (40, 10), (40, 0)],
        ),
        // Half: it begins beside the fold and is closed across it.
        (
            outline(true, &[from(5, 14), to(20, 10), UpToHeading]),
            &[(0, 0), (0, 10), (15, 14), (25, 14), (40, 10), (40, 0)],
        ),
    ];
    assert_corners(cases);
}

#[test]
fn a_notch_has_corners_of_its_own() {
    let cases: &[(Outline, &[(i64, i64)])] = &[
        (
            outline(
                false,
                &[
                    from(0, 14),
                    notch((10, 14), (4, 3), true),
                    to(40, 14),
                    UpToHeading,
                ],
            ),
            &[
                (0, 0),
                (0, 14),
                (8, 14),
                (8, 11),
                (12, 11),
                (12, 14),
                (40, 14),
                (40, 0),
            ],
        ),
        (
            outline(
                false,
                &[
                    from(0, 14),
                    notch((10, 14), (4, 3), false),
                    to(40, 14),
                    UpToHeading,
                ],
            ),
            &[
                (0, 0),
                (0, 14),
                (8, 14),
                (10, 11),
                (12, 14),
                (40, 14),
                (40, 0),
            ],
        ),
        // The near corner of the notch is where the pen is already.
        (
            outline(
                false,
                &[
                    from(0, 14),
                    to(8, 14),
                    notch((10, 14), (4, 3), false),
                    to(40, 14),
                    UpToHeading,
                ],
            ),
            &[
                (0, 0),
                (0, 14),
                (8, 14),
                (10, 11),
                (12, 14),
                (40, 14),
                (40, 0),
            ],
        ),
    ];
    assert_corners(cases);
}

#[test]
fn the_pen_goes_on_from_where_it_is_in_any_direction() {
    let cases: &[(Outline, &[(i64, i64)])] = &[
        (
            outline(false, &[from(0, 14), by(20, 0), by(20, -4), by(0, -10)]),
            &[(0, 0), (0, 14), (20, 14), (40, 10), (40, 0)],
        ),
        // Under a hook the pen goes back to the left, and so does a notch there.
        (
            outline(
                false,
                &[
                    from(0, 14),
                    to(30, 14),
                    to(30, 10),
                    notch((20, 10), (4, 2), false),
                    to(10, 10),
                    to(10, 4),
                    to(40, 4),
                    UpToHeading,
                ],
            ),
            &[
                (0, 0),
                (0, 14),
                (30, 14),
                (30, 10),
                (22, 10),
                (20, 8),
                (18, 10),
                (10, 10),
                (10, 4),
                (40, 4),
                (40, 0),
            ],
        ),
        // A side that slants all the way from the heading.
        (
            outline(false, &[from(0, 0), to(6, 14), to(40, 14), UpToHeading]),
            &[(0, 0), (6, 14), (40, 14), (40, 0)],
        ),
    ];
    assert_corners(cases);
}

#[test]
fn proportions_follow_the_width_half_of_it_on_a_half_outline() {
    let part = |numerator, denominator, plus| Proportion {
        part: ratio(numerator, denominator),
        plus: inches(plus),
    };
    let steps = [
        OutlineStep::From {
            across: part(0, 1, 0),
            down: part(0, 1, 14),
        },
        OutlineStep::To {
            across: part(2, 5, 1),
            down: part(0, 1, 14),
        },
        OutlineStep::To {
            across: part(1, 1, 0),
            down: part(0, 1, 10),
        },
        UpToHeading,
    ];
    for (half, expected) in [
        (
            true,
            &[(0, 0), (0, 10), (11, 14), (29, 14), (40, 10), (40, 0)][..],
        ),
        (false, &[(0, 0), (0, 14), (17, 14), (40, 10), (40, 0)]),
    ] {
        assert_eq!(
            corners(&sound(&shaped(outline(half, &steps))).shape),
            in_inches(expected)
        );
    }
}

/// Common practice, no source: concave corners are snipped, convex ones trimmed.
#[test]
fn edges_and_corners_are_told_apart() {
    let steps = [
        from(0, 14),
        notch((20, 14), (4, 3), true),
        to(40, 14),
        to(40, 4),
        to(37, 2),
        to(40, 0),
    ];
    let shape = sound(&shaped(outline(false, &steps))).shape;
    use Relief::{Snip, Trim};
    let reliefs: Vec<_> = shape
        .corners
        .iter()
        .filter_map(|corner| corner.relief)
        .collect();
    assert_eq!(
        reliefs,
        [Trim, Trim, Trim, Snip, Snip, Trim, Trim, Trim, Snip, Trim]
    );
    use EdgeKind::{Lower, Side, Top};
    let kinds: Vec<_> = shape.edges.iter().map(|edge| edge.kind).collect();
    assert_eq!(
        kinds,
        [
            Side, Lower, Lower, Lower, Lower, Lower, Side, Lower, Lower, Top
        ]
    );
    let steps: Vec<_> = shape.edges.iter().map(|edge| edge.step).collect();
    let drawn = [0, 1, 1, 1, 1, 2, 3, 4, 5].map(Some);
    assert_eq!(steps[..9], drawn);
    assert_eq!(steps[9], None);
    let lengths: Vec<_> = shape.edges.iter().map(|edge| edge.length).collect();
    assert_eq!(lengths[..7], [14, 18, 3, 4, 3, 18, 10].map(inches));
}

/// Common practice, no source.
#[test]
fn a_turn_of_less_than_one_in_twelve_calls_for_nothing() {
    for (rise, relief) in [(1, None), (4, Some(Relief::Trim))] {
        let steps = [from(0, 14), to(20, 14), to(40, 14 - rise), UpToHeading];
        let shape = sound(&shaped(outline(false, &steps))).shape;
        assert_eq!(shape.corners[2].relief, relief, "{rise} in in 20 in");
    }
}

#[test]
fn the_step_of_a_mirrored_edge_is_the_one_that_drew_it() {
    let steps = [from(0, 14), to(14, 14), to(14, 10), to(20, 10), UpToHeading];
    let shape = sound(&shaped(outline(true, &steps))).shape;
    let steps: Vec<_> = shape.edges.iter().map(|edge| edge.step).collect();
    assert_eq!(
        steps,
        [
            Some(4),
            Some(3),
            Some(2),
            Some(1),
            Some(2),
            Some(3),
            Some(4),
            None
        ]
    );
}

/// What is wrong with each outline, half or whole, is told at its step and once.
#[track_caller]
fn assert_wrong(cases: &[(bool, &[OutlineStep], &[OutlineMatter])]) {
    for (half, steps, expected) in cases {
        let (_, matters) = alone(&shaped(outline(*half, steps)), &cloth());
        let expected: Vec<Matter> = expected.iter().cloned().map(Matter::Outline).collect();
        assert_eq!(matters, expected, "half {half}: {steps:?}");
    }
}

#[test]
fn an_outline_that_does_not_begin_or_end_is_told() {
    use OutlineMatter::*;
    let cases: &[(bool, &[OutlineStep], &[OutlineMatter])] = &[
        (false, &[], &[NoStart { step: None }]),
        (
            false,
            &[to(0, 14), to(40, 14), UpToHeading],
            &[NoStart { step: Some(0) }],
        ),
        (
            false,
            &[from(0, 14), from(3, 14), UpToHeading],
            &[NoStart { step: Some(1) }],
        ),
        (
            false,
            &[from(0, 14), to(40, 14)],
            &[NotClosed {
                step: 1,
                across: inches(40),
                down: inches(14),
            }],
        ),
        (
            false,
            &[from(0, 14), to(37, 14), UpToHeading],
            &[HeadingShort {
                step: 2,
                amount: inches(3),
                width: inches(40),
            }],
        ),
        (
            false,
            &[from(2, 14), to(40, 14), UpToHeading],
            &[HeadingShort {
                step: 0,
                amount: inches(2),
                width: inches(40),
            }],
        ),
        (
            true,
            &[from(0, 14), to(19, 14), UpToHeading],
            &[HeadingShort {
                step: 2,
                amount: inches(1),
                width: inches(20),
            }],
        ),
    ];
    assert_wrong(cases);
}

#[test]
fn a_step_that_leaves_the_panel_is_told() {
    use OutlineMatter::*;
    let beyond = |step, amount, side, limit| OutsideSize {
        step,
        amount: inches(amount),
        beyond: side,
        limit: inches(limit),
    };
    let cases: &[(bool, &[OutlineStep], &[OutlineMatter])] = &[
        (
            false,
            &[from(0, 14), to(20, 17), to(40, 14), UpToHeading],
            &[beyond(1, 3, OutlineLimit::Drop, 14)],
        ),
        (
            false,
            &[from(0, 14), to(20, -2), to(40, 14), UpToHeading],
            &[beyond(1, 2, OutlineLimit::HeadingLine, 0)],
        ),
        (
            false,
            &[from(0, 14), to(41, 14), to(40, 10), UpToHeading],
            &[beyond(1, 1, OutlineLimit::Edge, 40)],
        ),
        (
            false,
            &[from(-1, 14), to(40, 14), UpToHeading],
            &[beyond(0, 1, OutlineLimit::Edge, 0)],
        ),
        (
            true,
            &[
                from(0, 14),
                notch((0, 14), (4, 2), true),
                to(20, 14),
                UpToHeading,
            ],
            &[beyond(1, 2, OutlineLimit::Fold, 0)],
        ),
        // One step too far carries those that go on from it along.
        (
            false,
            &[from(0, 14), by(30, 0), by(12, 0), by(0, -4), UpToHeading],
            &[beyond(2, 2, OutlineLimit::Edge, 40)],
        ),
        (
            false,
            &[from(0, 14), to(20, 17), to(41, 14), UpToHeading],
            &[
                beyond(1, 3, OutlineLimit::Drop, 14),
                beyond(2, 1, OutlineLimit::Edge, 40),
            ],
        ),
    ];
    assert_wrong(cases);
}

#[test]
fn a_line_that_has_no_length_or_crosses_itself_is_told() {
    use OutlineMatter::*;
    let cases: &[(bool, &[OutlineStep], &[OutlineMatter])] = &[
        (
            false,
            &[from(0, 14), to(0, 14), to(40, 14), UpToHeading],
            &[NoLength { step: 1 }],
        ),
        (
            false,
            &[
                from(0, 14),
                notch((20, 14), (4, 0), true),
                to(40, 14),
                UpToHeading,
            ],
            &[NoLength { step: 1 }],
        ),
        (
            false,
            &[from(0, 11), to(40, 11), UpToHeading],
            &[ShortOfDrop { amount: inches(3) }],
        ),
        (
            false,
            &[from(0, 14), to(30, 4), to(10, 4), to(40, 14), UpToHeading],
            &[CrossesItself {
                first: 1,
                second: 3,
            }],
        ),
        // Both halves cross; the mistake is one.
        (
            true,
            &[from(0, 14), to(15, 4), to(5, 4), to(20, 14), UpToHeading],
            &[CrossesItself {
                first: 1,
                second: 3,
            }],
        ),
        // A notch as deep as the panel is long touches the heading.
        (
            false,
            &[
                from(0, 14),
                notch((20, 14), (4, 14), false),
                to(40, 14),
                UpToHeading,
            ],
            &[CrossesItself {
                first: 1,
                second: 1,
            }],
        ),
        // Out and back along the same line.
        (
            false,
            &[
                from(0, 10),
                to(20, 10),
                to(20, 14),
                to(20, 10),
                to(40, 10),
                UpToHeading,
            ],
            &[CrossesItself {
                first: 1,
                second: 3,
            }],
        ),
    ];
    assert_wrong(cases);
}

#[test]
fn short_of_the_drop_is_still_a_panel() {
    let (made, _) = alone(
        &shaped(outline(false, &[from(0, 11), to(40, 11), UpToHeading])),
        &cloth(),
    );
    assert_eq!(made.unwrap().shape.area(), Area::of(inches(40), inches(11)));
}

#[test]
fn corners_have_a_limit_and_are_quick_below_it() {
    let teeth = |count: u32| {
        let mut steps = vec![from(0, 14)];
        for tooth in 1..count {
            let across = inches(40).portion(tooth.into(), count.into());
            let down = if tooth % 2 == 0 {
                inches(14)
            } else {
                inches(3)
            };
            let (across, down) = crate::sample::at(across, down);
            steps.push(OutlineStep::To { across, down });
        }
        steps.extend([to(40, 14), UpToHeading]);
        let mut order = shaped(outline(false, &steps));
        order.making.face = crate::sample::seams(Length::ZERO);
        alone(&order, &cloth())
    };
    assert_eq!(teeth(MAXIMUM_CORNERS - 2).1, []);
    let (made, matters) = teeth(MAXIMUM_CORNERS);
    let too_many = OutlineMatter::TooManyCorners {
        limit: MAXIMUM_CORNERS,
    };
    assert_eq!((made, matters), (None, vec![Matter::Outline(too_many)]));
}

#[test]
fn an_odd_width_keeps_one_corner_at_the_fold() {
    let mut order = shaped(Outline {
        half: true,
        steps: vec![
            from(0, 14),
            OutlineStep::To {
                across: Proportion {
                    part: ratio(1, 1),
                    plus: Length::ZERO,
                },
                down: Proportion::fixed(inches(10)),
            },
            UpToHeading,
        ],
        ..Outline::straight(inches(14))
    });
    order.width = exactly(inches(40) + Length::from_nanometres(1));
    let shape = sound(&order).shape;
    assert_eq!(shape.corners.len(), 5);
    assert_eq!(shape.corners[2].at.across, inches(20));
    assert_eq!(
        shape.corners[4].at.across,
        inches(40) + Length::from_nanometres(1)
    );
    assert!(has_like_halves(&shape));
}

/// A side that begins above the lower edge is one straight edge from the heading line down, however
/// deep the heading; where it bulges from there on, the corner stays.
#[test]
fn joints_in_a_straight_line_are_no_corners() {
    let whole = [from(0, 4), to(0, 14), to(40, 14), UpToHeading];
    let half = [from(0, 14), to(20, 14), UpToHeading];
    for (name, outline) in [
        ("whole", outline(false, &whole)),
        ("half", outline(true, &half)),
    ] {
        for heading in [
            Heading::Plain,
            Heading::OverRod {
                tail: inches(3),
                fastener: None,
            },
        ] {
            let order = PanelOrder {
                heading,
                ..shaped(outline.clone())
            };
            let shape = sound(&order).shape;
            let last = order.outline.steps.len() - 1;
            assert_eq!(shape.corners.len(), 4, "{name}");
            // The last step draws the right end of the heading, whatever lies above it.
            assert_eq!(shape.corners[3].step, Some(last), "{name}");
        }
    }
    let bulging = [
        from(0, 4),
        arc(0, 14, bulge(2, false)),
        to(40, 14),
        UpToHeading,
    ];
    let shape = sound(&shaped(outline(false, &bulging))).shape;
    let expected = in_inches(&[(0, 0), (0, 4), (0, 14), (40, 14), (40, 0)]);
    assert_eq!(corners(&shape), expected);
    assert!(shape.edges[1].curve.is_some());
}

/// Two arcs that rise to a point at the fold.
#[test]
fn curves_that_meet_at_the_fold_in_a_point_keep_their_corner() {
    let pointed = |names: &[(usize, &str)]| {
        let steps = [from(0, 10), arc(20, 10, bulge(4, true)), UpToHeading];
        let mut outline = outline(true, &steps);
        let names = names.iter().map(|(step, name)| (*step, (*name).to_owned()));
        outline.names = names.collect();
        sound(&shaped(outline)).shape
    };
    let shape = pointed(&[]);
    let expected = in_inches(&[(0, 0), (0, 10), (20, 10), (40, 10), (40, 0)]);
    assert_eq!(corners(&shape), expected);
    assert_eq!(shape.corners[2].relief, Some(Relief::Snip));
    assert!(has_like_halves(&shape));
    let steps: Vec<_> = shape.edges.iter().map(|edge| edge.step).collect();
    assert_eq!(steps, [Some(2), Some(1), Some(1), Some(2), None]);
    let steps: Vec<_> = shape.corners.iter().map(|corner| corner.step).collect();
    assert_eq!(steps, [None, Some(1), Some(0), Some(1), Some(2)]);
    assert_eq!(
        pointed(&[(0, "tip")]).corners[2].name.as_deref(),
        Some("tip")
    );
}

/// A smooth curve over the fold is one edge, but for a name that somebody means to find there.
#[test]
fn a_named_point_on_the_fold_stays_a_corner_of_a_smooth_curve() {
    let steps = [
        from(0, 14),
        arc(20, 10, ArcOrder::StartingLevel),
        UpToHeading,
    ];
    let mut named = outline(true, &steps);
    named.names = [(0, String::from("middle"))].into();
    let shape = sound(&shaped(named)).shape;
    assert_eq!(shape.corners.len(), 5);
    assert_eq!(shape.corners[2].name.as_deref(), Some("middle"));
    assert_eq!(shape.corners[2].relief, None);
}

#[test]
fn halves_are_alike_or_not_wherever_the_shape_lies() {
    let halves_alike = |outline| {
        let made = sound(&shaped(outline));
        // The cut line begins left of and above the panel.
        (
            has_like_halves(&made.shape),
            has_like_halves(&made.pieces[0].outline),
        )
    };
    let level = |right: Length| {
        let (across, down) = (Proportion::fixed(inches(40)), Proportion::fixed(right));
        outline(
            false,
            &[
                from(0, 14),
                to(20, 14),
                OutlineStep::To { across, down },
                UpToHeading,
            ],
        )
    };
    assert_eq!(halves_alike(level(inches(14))), (true, true));
    let (alike, _) = halves_alike(level(inches(14) - Length::from_nanometres(1)));
    assert!(!alike);
    let arched = |steps: [OutlineStep; 2]| {
        let [left, right] = steps;
        outline(false, &[from(0, 10), left, right, UpToHeading])
    };
    let swelling = |across| arc(across, 10, bulge(4, true));
    assert_eq!(
        halves_alike(arched([swelling(20), swelling(40)])),
        (true, true)
    );
    let (alike, _) = halves_alike(arched([swelling(20), to(40, 10)]));
    assert!(!alike);
    let flatter_by = |micrometres| OutlineStep::ArcTo {
        across: Proportion::fixed(inches(40)),
        down: Proportion::fixed(inches(10)),
        arc: ArcOrder::Bulge {
            bulge: Proportion::fixed(inches(4) - Length::from_nanometres(1_000) * micrometres),
            outward: true,
        },
    };
    // The points of a curve stand for it within 20 micrometres, on either side.
    for (micrometres, expected) in [(30, true), (1_000, false)] {
        let (alike, _) = halves_alike(arched([swelling(20), flatter_by(micrometres)]));
        assert_eq!(alike, expected, "{micrometres}");
    }
    // A curve that is its own image, but for where along it its points lie.
    let bowl = [
        from(0, 11),
        curve((10, 15), (30, 15), (40, 11)),
        UpToHeading,
    ];
    assert_eq!(halves_alike(outline(false, &bowl)), (true, true));
}

/// A notch is drawn on from the side on which the pen stands; from right above, on from the left.
#[test]
fn a_notch_is_drawn_on_from_where_the_pen_stands() {
    let tips = [(18, 14), (20, 12), (22, 14)];
    for (start, reversed) in [(12, false), (20, false), (28, true)] {
        let steps = [
            from(0, 10),
            to(start, 10),
            notch((20, 14), (4, 2), false),
            to(40, 14),
            UpToHeading,
        ];
        let (made, matters) = alone(&shaped(outline(false, &steps)), &cloth());
        // Drawn from the right, the line would cross itself on its way to the right edge.
        assert_eq!(made.is_none(), reversed, "{start}: {matters:?}");
        if let Some(made) = made {
            assert_eq!(corners(&made.shape)[3..6], in_inches(&tips));
        }
    }
}
