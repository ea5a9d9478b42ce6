//! What a rule becomes on the strip: places, folds, counts, and how what is open is settled.

use pelmet_measure::Length;
use pelmet_model::{
    FoldPlace, PleatKind, PleatRule, Pleating, Ranged, Start, StepKind, StretchMade, Toward,
    TowardOrder,
};
use pelmet_workroom::{ROUNDING, finished_at, fold, fold_pleating, lay_out, tolerance};

use crate::rules::*;

const INCH: Length = Length::INCH;

/// Each visible fold as crease, line it is brought to and place once pleated, in eighths.
fn folds(pleating: &Pleating) -> Vec<(i64, i64, i64, Toward)> {
    let eighths = |length: Length| length.nanometres() / inches(1).nanometres();
    let all = pleating.pleats.iter().flat_map(|pleat| &pleat.folds);
    all.map(|fold| {
        (
            eighths(fold.crease),
            eighths(fold.brought_to),
            eighths(fold.finished),
            fold.toward,
        )
    })
    .collect()
}

#[test]
fn each_kind_brings_its_folds_where_they_belong() {
    use Toward::{Left, Right};
    let two = inches(16);
    let cases = [
        (
            "knife to the left",
            knife(two, TowardOrder::Left),
            vec![(40, 8, 8, Left)],
        ),
        (
            "knife to the right",
            knife(two, TowardOrder::Right),
            vec![(8, 40, 8, Right)],
        ),
        (
            "box",
            boxed(two, None),
            vec![(40, 8, 8, Left), (72, 104, 40, Right)],
        ),
        (
            "box, face 3",
            boxed(two, Some(inches(24))),
            vec![(40, 8, 8, Left), (64, 96, 32, Right)],
        ),
        (
            "inverted",
            inverted(two, None),
            vec![(8, 40, 8, Right), (72, 40, 8, Left)],
        ),
        (
            "inverted, face 5",
            inverted(two, Some(inches(40))),
            vec![(8, 40, 8, Right), (80, 48, 16, Left)],
        ),
        (
            "kick",
            pleat(of(PleatKind::Kick), Ranged::fixed(two)),
            vec![(8, 40, 8, Right), (72, 40, 8, Left)],
        ),
        (
            "double box",
            double_boxed(two, None),
            vec![
                (40, 8, 8, Left),
                (72, 40, 8, Left),
                (104, 136, 40, Right),
                (136, 168, 40, Right),
            ],
        ),
        (
            "double box, face 5",
            double_boxed(two, Some(inches(40))),
            vec![
                (40, 8, 8, Left),
                (72, 40, 8, Left),
                (112, 144, 48, Right),
                (144, 176, 48, Right),
            ],
        ),
    ];
    for (name, pleat, expected) in cases {
        let rule = from_left(vec![plain(INCH), pleat, plain(Length::inches(5))]);
        let laid = lay_out(&rule, None, None).unwrap();
        assert_eq!(folds(&laid), expected, "{name}");
        let folded = fold(laid.flat, &laid.creases);
        assert_eq!(folded.finished, laid.finished, "{name}");
        assert!(
            laid.creases.iter().all(|crease| crease.pleat == 0),
            "{name}"
        );
    }
}

/// Plain cloth that ends a repeat lies between its turns: the space within a group twice in a
/// group of three, the space between groups once for two of them.
#[test]
fn groups_have_a_space_within_and_a_space_between() {
    let group = repeat(
        Ranged::fixed(3),
        vec![knife(INCH, TowardOrder::Left), plain(INCH)],
    );
    let between = open(Length::inches(3), Length::inches(6), Length::inches(4));
    let rule = from_left(vec![
        plain(INCH),
        any_number(vec![group, between]),
        plain(INCH),
    ]);
    for (finished, groups, spaces) in [(10, 2, 4), (16, 3, 4), (17, 3, 0), (22, 4, 4)] {
        let laid = lay_out(&rule, Some(Length::inches(finished)), None).unwrap();
        let gaps: Vec<Length> = laid
            .pleats
            .windows(2)
            .map(|pair| pair[1].from - pair[0].to)
            .collect();
        assert_eq!(laid.pleats.len(), groups * 3, "{finished}");
        for (index, gap) in gaps.iter().enumerate() {
            let expected = if index % 3 == 2 { spaces } else { 1 };
            if expected > 0 {
                assert_eq!(*gap, Length::inches(expected), "{finished}, gap {index}");
            }
        }
    }
}

#[test]
fn a_rule_from_the_centre_is_worked_outward_and_mirrored() {
    let rule = from_centre(vec![
        plain(Length::inches(2)),
        knife(INCH, TowardOrder::Centre),
        plain(Length::inches(6)),
    ]);
    let laid = lay_out(&rule, None, None).unwrap();
    assert_eq!(
        (laid.flat, laid.finished),
        (Length::inches(20), Length::inches(16))
    );
    let expected = [(48, 64, 48, Toward::Right), (112, 96, 80, Toward::Left)];
    assert_eq!(folds(&laid), expected);
    assert_eq!(
        laid.pleats
            .iter()
            .map(|pleat| pleat.mirrored)
            .collect::<Vec<_>>(),
        [true, false]
    );
}

#[test]
fn a_rule_from_the_left_edge_is_mirrored_to_the_right() {
    let steps = vec![
        plain(Length::inches(3)),
        knife(INCH, TowardOrder::Centre),
        StepKind::Rest,
    ];
    let laid = lay_out(
        &rule(Start::Left, true, steps),
        Some(Length::inches(16)),
        None,
    )
    .unwrap();
    assert_eq!(laid.flat, Length::inches(20));
    assert_eq!(
        folds(&laid),
        [(24, 40, 24, Toward::Right), (136, 120, 104, Toward::Left)]
    );
    assert_eq!(
        laid.pleats
            .iter()
            .map(|pleat| pleat.mirrored)
            .collect::<Vec<_>>(),
        [false, true]
    );
}

#[test]
fn a_rule_from_the_centre_that_is_not_mirrored_leaves_the_left_half_plain() {
    let steps = vec![plain(INCH), knife(INCH, TowardOrder::Edge), StepKind::Rest];
    let rule = rule(Start::Centre, false, steps);
    for (finished, flat) in [(None, Some(20)), (Some(18), None), (Some(18), Some(20))] {
        let laid = lay_out(
            &rule,
            finished.map(Length::inches),
            flat.map(Length::inches),
        )
        .unwrap();
        assert_eq!(
            (laid.flat, laid.finished),
            (Length::inches(20), Length::inches(18))
        );
        assert_eq!(folds(&laid), [(88, 104, 88, Toward::Right)]);
    }
}

#[test]
fn one_sided_spaces_meet_the_finished_width() {
    let space = open(INCH, Length::inches(9), Length::inches(2));
    let rule = rule(
        Start::Centre,
        false,
        vec![space, knife(INCH, TowardOrder::Edge)],
    );
    // The right half is s + 2 flat and s finished, the left half s + 2: together 2s + 2.
    let laid = lay_out(&rule, Some(Length::inches(12)), None).unwrap();
    assert_eq!(
        (laid.flat, laid.finished),
        (Length::inches(14), Length::inches(12))
    );
    assert_eq!(laid.pleats[0].from, Length::inches(7 + 5));
}

#[test]
fn toward_the_centre_and_the_edge_depend_on_the_half() {
    use TowardOrder::{Centre, Edge, Left, Right};
    let directions = |start, mirrored, toward| {
        let steps = vec![
            plain(INCH),
            knife(INCH, toward),
            plain(INCH),
            knife(INCH, toward),
            plain(INCH),
        ];
        let laid = lay_out(&rule(start, mirrored, steps), None, None).unwrap();
        let way = |toward| if toward == Toward::Left { '<' } else { '>' };
        laid.pleats
            .iter()
            .map(|pleat| way(pleat.folds[0].toward))
            .collect::<String>()
    };
    let cases = [
        (Start::Left, false, Centre, "><"),
        (Start::Left, false, Edge, "<>"),
        (Start::Left, false, Left, "<<"),
        (Start::Left, false, Right, ">>"),
        (Start::Left, true, Centre, ">><<"),
        (Start::Left, true, Edge, "<<>>"),
        (Start::Left, true, Left, "<<>>"),
        (Start::Centre, true, Centre, ">><<"),
        (Start::Centre, true, Edge, "<<>>"),
        (Start::Centre, true, Right, "<<>>"),
        (Start::Centre, false, Centre, "<<"),
        (Start::Centre, false, Edge, ">>"),
    ];
    for (start, mirrored, toward, expected) in cases {
        assert_eq!(
            directions(start, mirrored, toward),
            expected,
            "{start:?} {mirrored} {toward:?}"
        );
    }
}

/// Its fold lies on the line from which left and right are told apart.
#[test]
fn a_pleat_in_the_very_middle_counts_to_the_right() {
    for (toward, expected) in [
        (TowardOrder::Centre, Toward::Left),
        (TowardOrder::Edge, Toward::Right),
    ] {
        let rule = from_left(vec![plain(INCH), knife(INCH, toward), plain(INCH)]);
        let laid = lay_out(&rule, None, None).unwrap();
        assert_eq!(laid.pleats[0].folds[0].toward, expected);
    }
}

#[test]
fn plain_cloth_that_ends_a_repeat_lies_only_between_its_turns() {
    let inner = vec![
        plain(INCH),
        repeat(
            Ranged::fixed(2),
            vec![knife(INCH, TowardOrder::Left), plain(INCH)],
        ),
        plain(Length::inches(3)),
    ];
    let laid = lay_out(
        &from_left(vec![repeat(Ranged::fixed(3), inner)]),
        None,
        None,
    )
    .unwrap();
    // Three turns of 1 + knife + 1 + knife, with 3 between.
    assert_eq!(
        (laid.finished, laid.pleats.len()),
        (Length::inches(3 * 2 + 2 * 3), 6)
    );
    assert_eq!(laid.flat, Length::inches(12 + 6 * 2));
}

#[test]
fn a_placed_fold_lies_where_the_rule_says() {
    let two_on = FoldPlace::On(Length::inches(5));
    let rule = from_centre(vec![
        placed(
            knife(Length::inches(2), TowardOrder::Centre),
            FoldPlace::At(Length::inches(5)),
        ),
        placed(knife(INCH, TowardOrder::Centre), two_on),
        placed(boxed(inches(4), None), two_on),
        placed(inverted(inches(4), None), two_on),
    ]);
    let laid = lay_out(&rule, None, Some(Length::inches(60))).unwrap();
    let from_centre: Vec<_> = laid.pleats[4..]
        .iter()
        .flat_map(|pleat| &pleat.folds)
        .map(|fold| (fold.crease - Length::inches(30)).nanometres() / INCH.nanometres())
        .collect();
    // A box has its face of 1 in between its folds, an inverted pleat 2 in; each `on` is measured
    // from the last fold before it.
    assert_eq!(from_centre, [5, 10, 15, 16, 21, 23]);
}

#[test]
fn what_is_left_goes_to_plain_cloth_behind_the_last_placed_pleat() {
    let rule = from_left(vec![
        StepKind::Rest,
        placed(
            knife(INCH, TowardOrder::Left),
            FoldPlace::At(Length::inches(8)),
        ),
        StepKind::Rest,
        knife(INCH, TowardOrder::Left),
        plain(Length::inches(4)),
    ]);
    let laid = lay_out(&rule, None, Some(Length::inches(30))).unwrap();
    assert_eq!(laid.pleats[0].to, Length::inches(8));
    assert_eq!(laid.pleats[1].to, Length::inches(26));
}

#[test]
fn what_is_left_is_shared_by_all_that_take_it() {
    let steps = vec![
        StepKind::Rest,
        knife(INCH, TowardOrder::Left),
        StepKind::Rest,
    ];
    let laid = lay_out(&from_left(steps), Some(Length::inches(9)), None).unwrap();
    assert_eq!(laid.pleats[0].from, inches(36));
    assert_eq!(laid.flat, Length::inches(11));
    // Between four of them an odd nanometre or two is all the difference.
    let left = || knife(INCH, TowardOrder::Left);
    let steps = [
        StepKind::Rest,
        left(),
        StepKind::Rest,
        left(),
        StepKind::Rest,
        left(),
    ];
    let rule = from_left([steps.to_vec(), vec![StepKind::Rest]].concat());
    let odd = Length::inches(10) + Length::from_nanometres(2);
    let laid = lay_out(&rule, Some(odd), None).unwrap();
    let starts = laid
        .pleats
        .iter()
        .map(|pleat| pleat.from)
        .chain([laid.flat]);
    let ends = laid.pleats.iter().map(|pleat| pleat.to);
    for (from, to) in [Length::ZERO].into_iter().chain(ends).zip(starts) {
        let off = to - from - inches(20);
        assert!(
            Length::ZERO <= off && off <= Length::from_nanometres(1),
            "{off:?}"
        );
    }
}

#[test]
fn plain_cloth_moves_in_proportion_to_the_room_its_range_leaves() {
    let rule = from_left(vec![
        open(Length::inches(2), Length::inches(4), Length::inches(2)),
        knife(INCH, TowardOrder::Left),
        open(Length::inches(3), Length::inches(9), Length::inches(3)),
        knife(INCH, TowardOrder::Left),
        plain(Length::inches(2)),
    ]);
    // 7 in at the ideals; 2 of the 8 in of room are needed, a quarter of each.
    let laid = lay_out(&rule, Some(Length::inches(9)), None).unwrap();
    assert_eq!(laid.pleats[0].from, inches(20));
    assert_eq!(laid.pleats[1].from - laid.pleats[0].to, inches(36));
}

#[test]
fn depths_move_only_when_plain_cloth_cannot() {
    let knives = |depth| pleat(pointing(PleatKind::Knife, TowardOrder::Left), depth);
    let rule = from_left(vec![
        open(Length::inches(2), Length::inches(3), Length::inches(2)),
        knives(Ranged::between(INCH, Length::inches(3), INCH)),
        plain(Length::inches(4)),
    ]);
    let depth_at = |flat| {
        let laid = lay_out(&rule, None, Some(Length::inches(flat))).unwrap();
        (laid.pleats[0].from, laid.pleats[0].depth)
    };
    assert_eq!(depth_at(8), (Length::inches(2), INCH));
    assert_eq!(depth_at(9), (Length::inches(3), INCH));
    assert_eq!(depth_at(12), (Length::inches(3), inches(20)));
}

#[test]
fn with_both_widths_depths_make_the_take_up_and_plain_cloth_the_width() {
    let depth = Ranged::between(inches(8), inches(16), inches(10));
    let rule = from_left(vec![
        plain(Length::inches(2)),
        repeat(
            Ranged::fixed(4),
            vec![
                pleat(of(PleatKind::Box), depth),
                open(Length::inches(1), Length::inches(9), Length::inches(3)),
            ],
        ),
        plain(Length::inches(2)),
    ]);
    // Take-up 24 in, 6 a box: depth 1 1/2 in, face 3 in; so 4 x 3 + 4 leaves 12 in for 3 spaces.
    let laid = lay_out(&rule, Some(Length::inches(28)), Some(Length::inches(52))).unwrap();
    assert_eq!(laid.finished, Length::inches(28));
    for pleat in &laid.pleats {
        assert_eq!(
            (pleat.depth, pleat.face),
            (inches(12), Some(Length::inches(3)))
        );
    }
    assert_eq!(laid.pleats[1].from - laid.pleats[0].to, Length::inches(4));
}

#[test]
fn both_widths_of_a_mirrored_panel_are_met_by_both_halves() {
    let depth = Ranged::between(inches(8), inches(16), inches(10));
    let kind = pointing(PleatKind::Knife, TowardOrder::Centre);
    let space = || open(INCH, Length::inches(9), Length::inches(3));
    for start in [Start::Left, Start::Centre] {
        let steps = vec![space(), pleat(kind.clone(), depth), space()];
        let rule = rule(start, true, steps);
        let (finished, flat) = (Length::inches(12), Length::inches(18));
        let laid = lay_out(&rule, Some(finished), Some(flat)).unwrap();
        let depths: Vec<Length> = laid.pleats.iter().map(|pleat| pleat.depth).collect();
        assert_eq!((laid.finished, laid.flat), (finished, flat));
        assert_eq!(depths, [inches(12); 2]);
    }
}

#[test]
fn of_two_counts_as_near_to_the_ideal_the_smaller_is_taken() {
    let space = open(Length::inches(3), Length::inches(7), Length::inches(5));
    let rule = from_left(vec![any_number(vec![
        space,
        knife(INCH, TowardOrder::Left),
    ])]);
    // Two spaces of 6 in or three of 4 in are both 1 in from the ideal, but for the rounding.
    for over in [0, 1, 2] {
        let finished = Length::inches(12) + Length::from_nanometres(over);
        let laid = lay_out(&rule, Some(finished), None).unwrap();
        assert_eq!(laid.pleats.len(), 2, "{over}");
    }
}

#[test]
fn several_open_counts_are_settled_together() {
    let knives = || {
        any_number(vec![
            knife(INCH, TowardOrder::Left),
            plain(Length::inches(3)),
        ])
    };
    let boxes = || any_number(vec![plain(Length::inches(7)), boxed(INCH, None)]);
    let laid = lay_out(
        &from_left(vec![knives(), boxes()]),
        Some(Length::inches(33)),
        None,
    );
    // Spaces of 3 between knives, 9 a box with its space: 33 = 5 x 3 + 2 x 9 = 2 x 3 + 3 x 9.
    let laid = laid.unwrap();
    assert_eq!(
        laid.pleats
            .iter()
            .filter(|pleat| pleat.kind == PleatKind::Box)
            .count(),
        3
    );
    assert_eq!(
        laid.pleats
            .iter()
            .filter(|pleat| pleat.kind == PleatKind::Knife)
            .count(),
        3
    );
}

#[test]
fn thirds_of_an_inch_are_no_contradiction() {
    let third = Length::inch_fraction(10, 3);
    let steps = vec![plain(third), knife(INCH, TowardOrder::Left)];
    let rule = from_left(vec![repeat(Ranged::fixed(3), steps)]);
    let laid = lay_out(&rule, Some(Length::inches(10)), None).unwrap();
    assert_eq!(
        (laid.finished, laid.flat),
        (Length::inches(10), Length::inches(16))
    );
    let first = laid.pleats[0].from;
    assert!((first - third).abs() <= ROUNDING);
}

#[test]
fn a_width_of_an_odd_number_of_nanometres_is_met() {
    let space = open(INCH, Length::inches(9), Length::inches(2));
    let rule = from_centre(vec![space, knife(INCH, TowardOrder::Centre), plain(INCH)]);
    let odd = Length::inch_fraction(8 * 64 + 1, 64);
    let by_finished = lay_out(&rule, Some(odd), None).unwrap();
    assert_eq!(
        (by_finished.finished, by_finished.flat),
        (odd, odd + Length::inches(4))
    );
    let by_flat = lay_out(&rule, None, Some(odd)).unwrap();
    assert_eq!(
        (by_flat.finished, by_flat.flat),
        (odd - Length::inches(4), odd)
    );
}

/// Worked by hand: a crease lies in the middle of its turn, and what lies beyond is so much farther
/// on. The plain cloth of 1 in ends where the first turn of a fold to the right begins.
#[test]
fn a_turn_of_cloth_moves_what_lies_beyond_its_crease() {
    use Toward::{Left, Right};
    let cases = [
        (
            "knife to the left",
            knife(INCH, TowardOrder::Left),
            2,
            vec![(8 + 8 + 2 + 8 + 1, 8, 8, Left)],
        ),
        (
            "knife to the right",
            knife(INCH, TowardOrder::Right),
            2,
            vec![(8 + 1, 8 + 2 + 8 + 2 + 8, 8, Right)],
        ),
        (
            "box, closing behind",
            boxed(INCH, None),
            4,
            vec![
                (8 + 8 + 2 + 8 + 1, 8, 8, Left),
                (
                    8 + 8 + 2 + 8 + 2 + 16 + 1,
                    8 + 4 * 8 + 16 + 4 * 2,
                    24,
                    Right,
                ),
            ],
        ),
        (
            "double box",
            double_boxed(INCH, None),
            8,
            vec![
                (8 + 8 + 2 + 8 + 1, 8, 8, Left),
                // Brought to the fold before it, and so to the middle of its turn.
                (8 + 4 * 8 + 3 * 2 + 1, 8 + 8 + 2 + 8 + 1, 8, Left),
                (
                    8 + 4 * 8 + 4 * 2 + 16 + 1,
                    8 + 6 * 8 + 16 + 6 * 2 + 1,
                    24,
                    Right,
                ),
                (
                    8 + 6 * 8 + 6 * 2 + 16 + 1,
                    8 + 8 * 8 + 8 * 2 + 16,
                    24,
                    Right,
                ),
            ],
        ),
        (
            "inverted, folds meeting",
            inverted(INCH, None),
            4,
            vec![
                (8 + 1, 8 + 2 + 8 + 2 + 8, 8, Right),
                (8 + 2 + 8 + 2 + 16 + 2 + 8 + 1, 8 + 2 + 8 + 2 + 8, 8, Left),
            ],
        ),
    ];
    for (name, step, creases, expected) in cases {
        let rule = PleatRule {
            turn_of_cloth: Some(inches(2)),
            ..from_left(vec![plain(INCH), step, StepKind::Rest])
        };
        let laid = lay_out(&rule, None, Some(Length::inches(20))).unwrap();
        assert_eq!(folds(&laid), expected, "{name}");
        assert_eq!(
            laid.pleats[0].lost_in_turns(),
            inches(2 * creases),
            "{name}"
        );
    }
}

/// Two knives 3 in apart in cloth that loses 1/4 in at each crease: where the layout says a fold lies
/// is where folding brings it, and a turn stays at its crease.
#[test]
fn folds_behind_a_turn_lie_where_folding_brings_them() {
    for toward in [TowardOrder::Left, TowardOrder::Right] {
        let (one, other) = (knife(INCH, toward), knife(INCH, toward));
        let steps = vec![plain(INCH), one, plain(INCH * 3), other, StepKind::Rest];
        let rule = PleatRule {
            turn_of_cloth: Some(inches(2)),
            ..from_left(steps)
        };
        let laid = lay_out(&rule, None, Some(Length::inches(20))).unwrap();
        let folding = fold_pleating(&laid);
        for fold in laid.pleats.iter().flat_map(|pleat| &pleat.folds) {
            let ends_there = |stretch: &&StretchMade| stretch.flat_to == fold.crease;
            let stretch = folding.stretches.iter().find(ends_there).unwrap();
            assert_eq!(stretch.finished_to, fold.finished, "{toward:?}");
        }
        for stretch in &folding.stretches {
            let (from, to) = (stretch.flat_from, stretch.flat_to);
            for (at, finished) in [
                (from, stretch.finished_from),
                (from + stretch.turn_from, stretch.finished_from),
                (to - stretch.turn_to, stretch.finished_to),
                (to, stretch.finished_to),
            ] {
                assert_eq!(finished_at(stretch, at), finished, "{at:?} of {stretch:?}");
            }
        }
    }
}

#[test]
fn two_thousand_pleats_are_laid() {
    let steps = vec![knife(INCH, TowardOrder::Left), plain(INCH)];
    let rule = from_left(vec![repeat(Ranged::fixed(2_000), steps)]);
    assert_eq!(lay_out(&rule, None, None).unwrap().pleats.len(), 2_000);
}

/// The formula of the sums: 2en at worst, 2e*sqrt(n) likely.
#[test]
fn the_tolerance_grows_with_the_pleats() {
    let rule = from_left(Vec::new());
    assert_eq!(tolerance(&rule, 9), None);
    let careful = PleatRule {
        folding_error: Some(inches(1)),
        ..rule
    };
    assert_eq!(tolerance(&careful, 9), Some((inches(18), inches(6))));
    assert_eq!(tolerance(&careful, 0), Some((Length::ZERO, Length::ZERO)));
}
