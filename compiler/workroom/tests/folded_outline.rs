//! The outline of a pleated panel: the flat outline parted, moved and turned over, and no more.
#![expect(
    clippy::unwrap_used,
    clippy::arithmetic_side_effects,
    reason = "a test stops at the first broken promise"
)]

mod common;

use common::{crease_kind, creases, inches};
use pelmet_measure::Length;
use pelmet_model::{
    CreaseKind, CreaseMade, Elevation, FoldedOutline, Folding, LayerFolded, LiningShown, Point,
    StretchMade,
};
use pelmet_workroom::{ROUNDING, fold, fold_outline};
use proptest::prelude::*;

fn nanometre() -> Length {
    Length::from_nanometres(1)
}

fn point((across, down): (i64, i64)) -> Point {
    Point {
        across: inches(across),
        down: inches(down),
    }
}

fn points(inches: &[(i64, i64)]) -> Vec<Point> {
    inches.iter().copied().map(point).collect()
}

/// An outline in inches, folded.
fn folded(outline: &[(i64, i64)], flat: i64, text: &str) -> FoldedOutline {
    fold_outline(&points(outline), &fold(inches(flat), &creases(text)))
}

fn lining(across: (i64, i64), down: (i64, i64), stretch: usize) -> LiningShown {
    LiningShown {
        across: (inches(across.0), inches(across.1)),
        down: (inches(down.0), inches(down.1)),
        stretch,
    }
}

#[test]
fn layers_lie_from_the_back_to_the_front() {
    let rectangle = [(0, 0), (0, 10), (12, 10), (12, 0)];
    let made = folded(&rectangle, 12, "V4 M6");
    let told: Vec<_> = made
        .layers
        .iter()
        .map(|layer| (layer.stretch, layer.height, layer.face_up))
        .collect();
    assert_eq!(told, [(0, 0, true), (1, 1, false), (2, 2, true)]);
    let spans: Vec<_> = made.layers.iter().map(across).collect();
    let expected = [(0, 4), (2, 4), (2, 8)].map(|(from, to)| (inches(from), inches(to)));
    assert_eq!(spans, expected);
}

/// An outline of some edge, pleated, and what it comes to; in inches.
struct Case {
    name: &'static str,
    outline: &'static [(i64, i64)],
    creases: &'static str,
    lower_edge: &'static [(i64, i64)],
    lining: &'static [LiningTold],
}

/// The run across and the run down where lining shows, and its stretch.
type LiningTold = ((i64, i64), (i64, i64), usize);

const CASES: [Case; 10] = [
    Case {
        name: "level: the fold is as long as the cloth in front of it",
        outline: &[(0, 0), (0, 10), (12, 10), (12, 0)],
        creases: "V4 M6",
        lower_edge: &[(0, 10), (8, 10)],
        lining: &[],
    },
    Case {
        name: "rising to the right, the longer fold and cloth hang out below the front",
        outline: &[(0, 0), (0, 22), (12, 10), (12, 0)],
        creases: "V4 M6",
        lower_edge: &[(0, 22), (4, 18), (4, 14), (8, 10)],
        lining: &[((2, 4), (14, 18), 1)],
    },
    Case {
        name: "falling to the right, the front covers all",
        outline: &[(0, 0), (0, 10), (12, 22), (12, 0)],
        creases: "V4 M6",
        lower_edge: &[(0, 10), (2, 12), (2, 16), (8, 22)],
        lining: &[],
    },
    Case {
        name: "a step at a crease: only the cloth behind is longer",
        outline: &[(0, 0), (0, 14), (4, 14), (4, 10), (12, 10), (12, 0)],
        creases: "V4 M6",
        lower_edge: &[(0, 14), (4, 14), (4, 10), (8, 10)],
        lining: &[],
    },
    Case {
        name: "a step at the other crease: the fold is longer too",
        outline: &[(0, 0), (0, 14), (6, 14), (6, 10), (12, 10), (12, 0)],
        creases: "V4 M6",
        lower_edge: &[(0, 14), (4, 14), (4, 10), (8, 10)],
        lining: &[((2, 4), (10, 14), 1)],
    },
    Case {
        name: "folded over in front, the lining shows all the way down",
        outline: &[(0, 0), (0, 10), (10, 10), (10, 0)],
        creases: "V6",
        lower_edge: &[(0, 10), (6, 10)],
        lining: &[((2, 6), (0, 10), 1)],
    },
    Case {
        name: "a point in the turned cloth, seen where nothing in front reaches it",
        outline: &[
            (0, 0),
            (0, 10),
            (4, 10),
            (6, 14),
            (8, 10),
            (14, 10),
            (14, 0),
        ],
        creases: "V4 M8",
        lower_edge: &[(0, 10), (2, 14), (4, 10), (6, 10)],
        lining: &[((0, 4), (10, 14), 1)],
    },
    Case {
        name: "slanted cloth in front crosses the level edge behind it",
        outline: &[
            (0, 0),
            (0, 10),
            (12, 10),
            (12, 13),
            (16, 9),
            (18, 9),
            (18, 0),
        ],
        creases: "V8 M12",
        lower_edge: &[(0, 10), (4, 10), (4, 13), (7, 10), (8, 10), (8, 9), (10, 9)],
        lining: &[((7, 8), (9, 10), 1)],
    },
    Case {
        name: "slanted the other way, it crosses to the other side",
        outline: &[
            (0, 0),
            (0, 10),
            (12, 10),
            (12, 7),
            (16, 11),
            (18, 11),
            (18, 0),
        ],
        creases: "V8 M12",
        lower_edge: &[(0, 10), (7, 10), (8, 11), (10, 11)],
        lining: &[((4, 7), (7, 10), 1)],
    },
    Case {
        name: "a tooth in front parts the lining that shows behind it",
        outline: &[
            (0, 0),
            (0, 10),
            (12, 10),
            (12, 6),
            (14, 6),
            (14, 12),
            (15, 12),
            (15, 6),
            (18, 6),
            (18, 0),
        ],
        creases: "V8 M12",
        lower_edge: &[
            (0, 10),
            (6, 10),
            (6, 12),
            (7, 12),
            (7, 10),
            (8, 10),
            (8, 6),
            (10, 6),
        ],
        lining: &[((4, 6), (6, 10), 1), ((7, 8), (6, 10), 1)],
    },
];

/// Worked by hand: what each kind of lower edge comes to, and where the lining shows below it.
#[test]
fn pleated_edges_come_out_as_folded_paper_does() {
    for Case {
        name,
        outline,
        creases,
        lower_edge,
        lining: shown,
    } in CASES
    {
        let flat = outline.last().unwrap().0;
        let seen = folded(outline, flat, creases).elevation.unwrap();
        assert_eq!(seen.lower_edge, points(lower_edge), "{name}");
        let shown: Vec<_> = shown
            .iter()
            .map(|&(across, down, stretch)| lining(across, down, stretch))
            .collect();
        assert_eq!(seen.lining, shown, "{name}");
    }
}

/// Level cloth, folded under, whose front is shorter by so much and has a tooth so wide.
fn toothed(shorter: Length, tooth: Length) -> Vec<LiningShown> {
    let at = |across: Length, down: Length| Point { across, down };
    let (short, long) = (inches(10) - shorter, inches(12));
    let (left, right) = (inches(14), inches(14) + tooth);
    let outline = [
        at(inches(0), inches(0)),
        at(inches(0), inches(10)),
        at(inches(12), inches(10)),
        at(inches(12), short),
        at(left, short),
        at(left, long),
        at(right, long),
        at(right, short),
        at(inches(18), short),
        at(inches(18), inches(0)),
    ];
    let folding = fold(inches(18), &creases("V8 M12"));
    fold_outline(&outline, &folding).elevation.unwrap().lining
}

#[test]
fn lining_shows_and_ends_only_by_more_than_the_rounding() {
    let more = ROUNDING + nanometre();
    for (shorter, tooth, places) in [
        (ROUNDING, inches(1), 0),
        (more, inches(1), 2),
        (inches(1), ROUNDING, 1),
        (inches(1), more, 2),
    ] {
        let shown = toothed(shorter, tooth);
        assert_eq!(shown.len(), places, "{shorter:?} {tooth:?}: {shown:?}");
    }
}

#[test]
fn the_lowest_and_the_highest_point_are_the_leftmost_of_their_height() {
    let outline = [(0, 0), (0, 8), (2, 12), (4, 8), (6, 12), (8, 8), (8, 0)];
    let seen = folded(&outline, 8, "").elevation.unwrap();
    assert_eq!(seen.lowest(), Some(point((2, 12))));
    assert_eq!(seen.highest(), Some(point((0, 8))));
    let nothing = Elevation::default();
    assert_eq!((nothing.lowest(), nothing.highest()), (None, None));
}

/// A hook: cloth, none, and cloth again below one another.
#[test]
fn a_stretch_may_fall_into_parts() {
    let hook = [
        (0, 0),
        (0, 12),
        (12, 12),
        (12, 8),
        (4, 8),
        (4, 4),
        (12, 4),
        (12, 0),
    ];
    let made = folded(&hook, 12, "V6 M8");
    let parts: Vec<_> = made.layers.iter().map(|layer| layer.parts.len()).collect();
    assert_eq!(parts, [1, 2, 2]);
    let front = &made.layers[2].parts;
    let upper = points(&[(4, 4), (8, 4), (8, 0), (4, 0)]);
    let lower = points(&[(4, 12), (8, 12), (8, 8), (4, 8)]);
    assert!(
        is_same_ring(&front[0], &upper) || is_same_ring(&front[1], &upper),
        "{front:?}"
    );
    assert!(
        is_same_ring(&front[0], &lower) || is_same_ring(&front[1], &lower),
        "{front:?}"
    );
}

#[test]
fn a_notch_that_only_touches_a_crease_parts_one_side_of_it() {
    let notched = [(0, 0), (0, 12), (12, 12), (12, 8), (6, 6), (12, 4), (12, 0)];
    let made = folded(&notched, 12, "V6");
    let parts: Vec<_> = made.layers.iter().map(|layer| layer.parts.len()).collect();
    assert_eq!(parts, [1, 2]);
}

#[test]
fn creases_without_cloth_between_them_make_no_layer() {
    let rectangle = [(0, 0), (0, 10), (12, 10), (12, 0)];
    let made = folded(&rectangle, 12, "M0 V4 V4 M12");
    let stretches: Vec<_> = made.layers.iter().map(|layer| layer.stretch).collect();
    let mut sorted = stretches.clone();
    sorted.sort_unstable();
    assert_eq!(sorted, [1, 3], "{stretches:?}");
}

#[test]
fn what_is_folded_too_thickly_to_follow_is_not_drawn() {
    let zigzag: Vec<CreaseMade> = (1..4_000)
        .map(|at| CreaseMade {
            at: Length::millimetres(at),
            kind: crease_kind(at % 2 == 0),
            pleat: 0,
        })
        .collect();
    let flat = Length::millimetres(4_000);
    let outline = [
        Point {
            across: Length::ZERO,
            down: Length::ZERO,
        },
        Point {
            across: Length::ZERO,
            down: inches(9),
        },
        Point {
            across: flat,
            down: inches(19),
        },
        Point {
            across: flat,
            down: Length::ZERO,
        },
    ];
    let made = fold_outline(&outline, &fold(flat, &zigzag));
    assert_eq!(made.layers.len(), 4_000);
    assert_eq!(made.elevation, None);
}

#[test]
fn two_thousand_plain_pleats_are_drawn() {
    let creases: Vec<CreaseMade> = (0..2_000)
        .flat_map(|pleat| {
            let at = Length::millimetres(pleat * 60 + 40);
            let valley = CreaseMade {
                at,
                kind: CreaseKind::Valley,
                pleat: 0,
            };
            [
                valley,
                CreaseMade {
                    at: at + Length::millimetres(20),
                    kind: CreaseKind::Mountain,
                    ..valley
                },
            ]
        })
        .collect();
    let flat = Length::millimetres(2_000 * 60 + 40);
    let corner = |across, down| Point {
        across,
        down: Length::millimetres(down),
    };
    let outline = [
        corner(Length::ZERO, 0),
        corner(Length::ZERO, 900),
        corner(flat, 300),
        corner(flat, 0),
    ];
    let seen = fold_outline(&outline, &fold(flat, &creases))
        .elevation
        .unwrap();
    assert_eq!(seen.lining.len(), 2_000);
}

/// Outlines that reach round: points in order about a middle, so that no line crosses another.
fn outlines() -> impl Strategy<Value = Vec<Point>> {
    prop::collection::vec(20..100_i64, 3..24).prop_map(|reaches| {
        let middle = 500.0;
        let turn = std::f64::consts::TAU / reaches.len() as f64;
        let corner = |(index, reach): (usize, &i64)| {
            let (sine, cosine) = (turn * index as f64).sin_cos();
            let at = |part: f64| Length::from_millimetres_f64(middle + part * *reach as f64 * 5.0);
            Point {
                across: at(cosine).unwrap(),
                down: at(sine).unwrap(),
            }
        };
        reaches.iter().enumerate().map(corner).collect()
    })
}

/// Panels with a level heading over their whole width and any lower edge from left to right.
fn panels() -> impl Strategy<Value = Vec<Point>> {
    prop::collection::vec((1..200_i64, 50..600_i64), 1..12).prop_map(|steps| {
        let mut across = Length::ZERO;
        let corner = |across, down| Point {
            across,
            down: Length::millimetres(down),
        };
        let mut outline = vec![corner(Length::ZERO, 0)];
        for (on, down) in steps {
            outline.push(corner(across, down));
            across += Length::millimetres(on) + nanometre();
            outline.push(corner(across, (down * 7) % 550 + 50));
        }
        outline.push(corner(across, 0));
        outline
    })
}

/// Creases anywhere on a metre of cloth, some of them where corners lie.
fn any_creases() -> impl Strategy<Value = Vec<CreaseMade>> {
    let at = prop_oneof![
        0..1_000_000_000_i64,
        (0..100_i64).prop_map(|at| at * 10_000_000)
    ];
    let crease = (at, any::<bool>()).prop_map(|(at, mountain)| CreaseMade {
        at: Length::from_nanometres(at),
        kind: crease_kind(mountain),
        pleat: 0,
    });
    prop::collection::vec(crease, 0..12)
}

fn folding(outline: &[Point], creases: &[CreaseMade]) -> Folding {
    fold(
        outline.iter().map(|point| point.across).max().unwrap(),
        creases,
    )
}

proptest! {
    #[test]
    fn areas_of_all_layers_add_up_to_the_flat_area(
        outline in outlines(), creases in any_creases(),
    ) {
        let folding = folding(&outline, &creases);
        let made = fold_outline(&outline, &folding);
        let together: i128 = made.layers.iter().map(doubled_area).sum();
        prop_assert!((together - ring_area(&outline)).abs() <= rounding_of(&outline));
    }

    /// Held to another way of parting: cut off all that lies beyond one crease, then the other.
    #[test]
    fn every_layer_is_congruent_to_its_flat_stretch(
        outline in outlines(), creases in any_creases(),
    ) {
        let folding = folding(&outline, &creases);
        for layer in fold_outline(&outline, &folding).layers {
            let stretch = &folding.stretches[layer.stretch];
            let flat = flat_parts(&layer, stretch);
            for point in flat.iter().flatten() {
                prop_assert!(stretch.flat_from <= point.across && point.across <= stretch.flat_to);
                let on_crease = point.across == stretch.flat_from || point.across == stretch.flat_to;
                prop_assert!(on_crease || outline.contains(point));
            }
            let area: i128 = flat.iter().map(|part| ring_area(part)).sum();
            prop_assert_eq!(area.abs(), doubled_area(&layer).abs());
            let cut = cut_off(&outline, stretch.flat_from, false);
            let cut = cut_off(&cut, stretch.flat_to, true);
            prop_assert!((area - ring_area(&cut)).abs() <= rounding_of(&outline) * 2);
        }
    }

    #[test]
    fn level_and_upright_edges_are_parted_exactly(
        treads in prop::collection::vec((1..200_000_000_i64, 1..400_000_000_i64), 1..12),
        creases in any_creases(),
    ) {
        let mut across = Length::ZERO;
        let mut outline = vec![point((0, 0))];
        for (on, down) in treads {
            let down = Length::from_nanometres(down);
            outline.push(Point { across, down });
            across += Length::from_nanometres(on);
            outline.push(Point { across, down });
        }
        outline.push(Point { across, down: Length::ZERO });
        let made = fold_outline(&outline, &folding(&outline, &creases));
        let together: i128 = made.layers.iter().map(|layer| doubled_area(layer).abs()).sum();
        prop_assert_eq!(together, ring_area(&outline).abs());
    }

    #[test]
    fn at_the_heading_the_extents_are_those_of_the_folding(
        outline in panels(), creases in any_creases(),
    ) {
        let folding = folding(&outline, &creases);
        let made = fold_outline(&outline, &folding);
        let at_heading = |layer: &LayerFolded| -> Vec<Length> {
            let points = layer.parts.iter().flatten();
            points.filter(|point| point.down.is_zero()).map(|point| point.across).collect()
        };
        let reached: Vec<Length> = made.layers.iter().flat_map(at_heading).collect();
        prop_assert_eq!(reached.iter().min(), Some(&folding.leftmost));
        prop_assert_eq!(reached.iter().max(), Some(&folding.rightmost));
        let edge = made.elevation.unwrap().lower_edge;
        prop_assert_eq!(edge.first().unwrap().across, folding.leftmost);
        prop_assert_eq!(edge.last().unwrap().across, folding.rightmost);
    }

    #[test]
    fn without_pleats_the_outline_stays_as_it_is(outline in outlines()) {
        let made = fold_outline(&outline, &folding(&outline, &[]));
        prop_assert_eq!(made.layers.len(), 1);
        prop_assert_eq!(&made.layers[0].parts, &[outline]);
        prop_assert!(made.layers[0].face_up);
        prop_assert_eq!(made.elevation.unwrap().lining, vec![]);
    }

    /// Held to looking: of the layers that hold a point the front one is seen.
    #[test]
    fn what_is_seen_is_what_lies_in_front(
        outline in panels(), creases in any_creases(),
        looks in prop::collection::vec((0..2_000_000_000_i64, 0..700_000_000_i64), 40),
    ) {
        let folding = folding(&outline, &creases);
        let made = fold_outline(&outline, &folding);
        let seen = made.elevation.as_ref().unwrap();
        for (across, down) in looks {
            let at = Point {
                across: folding.leftmost + Length::from_nanometres(across),
                down: Length::from_nanometres(down),
            };
            let over: Vec<_> = made.layers.iter().filter(|layer| holds(layer, at)).collect();
            let front = over.last().filter(|layer| !layer.face_up);
            let boxes = |stretch| seen.lining.iter().any(|shown| {
                shown.stretch == stretch && within(at, shown)
            });
            // A sliver of a micrometre is no place.
            if let Some(front) = front && !near_an_edge(&made, at) {
                prop_assert!(boxes(front.stretch), "{at:?} shows {front:?}, not told in {seen:?}");
            }
            if !over.is_empty() {
                prop_assert!(down_of_edge(seen, at.across) >= at.down - nanometre() * 2);
            }
        }
        // Nothing is told that does not show somewhere.
        for shown in &seen.lining {
            prop_assert!(!made.layers.iter().find(|layer| layer.stretch == shown.stretch).unwrap().face_up);
            prop_assert!(shown.across.0 < shown.across.1 && shown.down.0 < shown.down.1);
        }
    }
}

fn across(layer: &LayerFolded) -> (Length, Length) {
    let all = || layer.parts.iter().flatten().map(|point| point.across);
    (all().min().unwrap(), all().max().unwrap())
}

fn closed(ring: &[Point]) -> impl Iterator<Item = (Point, Point)> {
    ring.iter()
        .copied()
        .zip(ring.iter().copied().cycle().skip(1))
}

fn nanometres(length: Length) -> i128 {
    length.nanometres().into()
}

/// Twice the area, signed by the way round.
fn ring_area(ring: &[Point]) -> i128 {
    closed(ring)
        .map(|(one, other)| {
            nanometres(one.across) * nanometres(other.down)
                - nanometres(other.across) * nanometres(one.down)
        })
        .sum()
}

/// Twice the area of a layer, with the sign its flat stretch has.
fn doubled_area(layer: &LayerFolded) -> i128 {
    let area: i128 = layer.parts.iter().map(|part| ring_area(part)).sum();
    if layer.face_up { area } else { -area }
}

/// A nanometre all round, once over.
fn rounding_of(outline: &[Point]) -> i128 {
    let reach = |(one, other): (Point, Point)| {
        nanometres((one.across - other.across).abs() + (one.down - other.down).abs())
    };
    closed(outline).map(reach).sum::<i128>() + 1
}

/// A layer laid flat again.
fn flat_parts(layer: &LayerFolded, stretch: &StretchMade) -> Vec<Vec<Point>> {
    let back = |point: &Point| {
        let along = (point.across - stretch.finished_from).abs();
        Point {
            across: stretch.flat_from + along,
            down: point.down,
        }
    };
    layer
        .parts
        .iter()
        .map(|part| part.iter().map(back).collect())
        .collect()
}

/// What of an outline lies on one side of a line straight down, bridges along the line included.
fn cut_off(outline: &[Point], at: Length, keep_left: bool) -> Vec<Point> {
    let keeps = |point: Point| (point.across <= at) == keep_left || point.across == at;
    let mut kept = Vec::new();
    for (from, to) in closed(outline) {
        if keeps(from) {
            kept.push(from);
        }
        if keeps(from) != keeps(to) {
            let part = (at - from.across)
                .ratio_to(to.across - from.across)
                .unwrap();
            kept.push(Point {
                across: at,
                down: from.down + (to.down - from.down).scaled(part),
            });
        }
    }
    kept
}

fn is_same_ring(one: &[Point], other: &[Point]) -> bool {
    let turned = |by: usize| {
        let mut ring = one.to_vec();
        ring.rotate_left(by);
        ring
    };
    let round = |ring: &[Point]| (0..one.len()).any(|by| turned(by) == ring);
    let back: Vec<Point> = other.iter().rev().copied().collect();
    one.len() == other.len() && (round(other) || round(&back))
}

/// Whether a point lies inside: straight below it lies an odd number of edges.
fn holds(layer: &LayerFolded, at: Point) -> bool {
    let below = layer
        .parts
        .iter()
        .flat_map(|part| closed(part))
        .filter(|(from, to)| {
            (from.across <= at.across) != (to.across <= at.across)
                && down_at(*from, *to, at.across) > at.down
        });
    below.count() % 2 == 1
}

fn near_an_edge(made: &FoldedOutline, at: Point) -> bool {
    let edges = made
        .layers
        .iter()
        .flat_map(|layer| layer.parts.iter().flat_map(|part| closed(part)));
    let margin = ROUNDING * 4;
    edges.into_iter().any(|(from, to)| {
        let beside =
            (from.across - at.across).abs() <= margin || (to.across - at.across).abs() <= margin;
        let over = (from.across <= at.across) != (to.across <= at.across)
            && (down_at(from, to, at.across) - at.down).abs() <= margin;
        beside || over
    })
}

fn down_at(from: Point, to: Point, across: Length) -> Length {
    let part = (across - from.across)
        .ratio_to(to.across - from.across)
        .unwrap();
    from.down + (to.down - from.down).scaled(part)
}

fn within(at: Point, shown: &LiningShown) -> bool {
    (shown.across.0..=shown.across.1).contains(&at.across)
        && (shown.down.0..=shown.down.1).contains(&at.down)
}

/// The lower edge at a position across, the lower of two where it steps.
fn down_of_edge(seen: &Elevation, across: Length) -> Length {
    let runs = seen.lower_edge.iter().zip(seen.lower_edge.iter().skip(1));
    runs.filter(|(from, to)| from.across <= across && across <= to.across)
        .map(|(from, to)| {
            if from.across == to.across {
                from.down.max(to.down)
            } else {
                down_at(*from, *to, across)
            }
        })
        .max()
        .unwrap()
}
