//! What is found in pleats that could be laid out.

use pelmet_measure::Length;
use pelmet_model::{FoldPlace, PleatMatter, PleatRule, Ranged, Start, StepKind, TowardOrder};
use pelmet_workroom::{check, fold, fold_pleating, intended_layers, lay_out};

use crate::rules::*;

const INCH: Length = Length::INCH;

fn found(rule: &PleatRule, flat: i64) -> Vec<PleatMatter> {
    let laid = lay_out(rule, None, Some(Length::inches(flat))).unwrap();
    check(rule, &laid, &fold(laid.flat, &laid.creases))
}

fn at(eighths: i64) -> FoldPlace {
    FoldPlace::At(inches(eighths))
}

fn on(eighths: i64) -> FoldPlace {
    FoldPlace::On(inches(eighths))
}

/// Common practice, no source: with knives 2 1/2, 1 1/2 and 1 1/2 in deep and visible folds 4 1/2,
/// 4 1/2 and 4 in apart from the centre outward, the innermost folds pass the centre by 1/2 in.
#[test]
fn the_innermost_fold_passes_the_centre_by_half_an_inch() {
    let centre = TowardOrder::Centre;
    let mut rule = from_centre(vec![
        placed(knife(inches(20), centre), at(36)),
        placed(knife(inches(12), centre), on(36)),
        placed(knife(inches(12), centre), on(32)),
    ]);
    rule.layers = Some(5);
    let expected = PleatMatter::FoldCrossesCentre {
        step: 0,
        amount: inches(4),
        fold_at: inches(36),
        taken_up: inches(40),
    };
    assert_eq!(found(&rule, 30), [expected]);
}

#[test]
fn pleats_with_room_for_every_fold_are_sound() {
    let (centre, edge) = (TowardOrder::Centre, TowardOrder::Edge);
    let space = || plain(Length::inches(3));
    let rules = [
        from_centre(vec![
            space(),
            knife(INCH, centre),
            space(),
            knife(INCH, centre),
            StepKind::Rest,
        ]),
        from_centre(vec![
            space(),
            knife(INCH, edge),
            space(),
            knife(INCH, edge),
            StepKind::Rest,
        ]),
        from_centre(vec![knife(Length::inches(3), centre), StepKind::Rest]),
        from_left(vec![
            space(),
            boxed(INCH, None),
            space(),
            inverted(INCH, None),
            StepKind::Rest,
        ]),
        rule(
            Start::Left,
            true,
            vec![space(), inverted(Length::inches(2), None), StepKind::Rest],
        ),
        from_centre(vec![
            placed(knife(Length::inches(2), centre), at(40)),
            placed(knife(inches(10), centre), on(36)),
            placed(knife(inches(10), centre), on(36)),
        ]),
    ];
    for rule in rules {
        assert_eq!(found(&rule, 40), [], "{rule:?}");
    }
}

#[test]
fn a_fold_that_crosses_is_reported_with_all_that_is_taken_up_before_it() {
    let centre = TowardOrder::Centre;
    // The second fold lies 7 in out, 8 in are taken up on the way: 2 by the box's first fold, then
    // 2 by its second, then 4; it runs into the box as well, and is then the box's neighbour's fault.
    let rule = from_centre(vec![
        placed(knife(inches(8), centre), at(12)),
        placed(boxed(inches(8), Some(inches(8))), on(16)),
        StepKind::Rest,
    ]);
    // The knife lands at 1 1/2 - 2; the box at 3 1/2 - 2 - 2, and 4 1/2 less the same.
    let crossing = |step, amount, fold_at, taken_up| PleatMatter::FoldCrossesCentre {
        step,
        amount: inches(amount),
        fold_at: inches(fold_at),
        taken_up: inches(taken_up),
    };
    assert_eq!(
        found(&rule, 40),
        [crossing(0, 4, 12, 16), crossing(1, 4, 28, 32)]
    );
}

#[test]
fn a_mirrored_rule_from_the_left_edge_can_cross_the_centre_too() {
    let steps = vec![placed(knife(inches(16), TowardOrder::Right), at(56))];
    let rule = rule(Start::Left, true, steps);
    // Half of 20 in; the fold at 7 in, 3 in from the centre, takes up 4 in.
    let expected = PleatMatter::FoldCrossesCentre {
        step: 0,
        amount: INCH,
        fold_at: Length::inches(3),
        taken_up: Length::inches(4),
    };
    assert_eq!(found(&rule, 20), [expected]);
}

/// Two folds on each side lie exactly over one another; that is what the pleat is.
#[test]
fn a_double_box_means_its_five_layers() {
    let steps = vec![
        plain(Length::inches(3)),
        double_boxed(INCH, None),
        StepKind::Rest,
    ];
    let rule = from_left(steps);
    assert_eq!(intended_layers(&rule), 5);
    assert_eq!(found(&rule, 30), []);
    let thinner = PleatRule {
        layers: Some(3),
        ..rule
    };
    let matters = found(&thinner, 30);
    assert!(
        matches!(
            matters.as_slice(),
            [PleatMatter::FoldOnFold { layers: 5, .. }]
        ),
        "{matters:?}"
    );
}

#[test]
fn an_underfold_longer_than_its_margin_overruns_the_edge() {
    let two = Length::inches(2);
    let cases = [
        (
            vec![plain(INCH), knife(two, TowardOrder::Right), StepKind::Rest],
            1,
        ),
        (
            vec![StepKind::Rest, knife(two, TowardOrder::Left), plain(INCH)],
            1,
        ),
        (vec![plain(INCH), inverted(two, None), StepKind::Rest], 1),
    ];
    for (steps, step) in cases {
        assert_eq!(
            found(&from_left(steps), 30),
            [PleatMatter::FoldOverrunsEdge { step, amount: INCH }]
        );
    }
    let mirrored = from_centre(vec![
        StepKind::Rest,
        knife(two, TowardOrder::Centre),
        plain(INCH),
    ]);
    assert_eq!(
        found(&mirrored, 30),
        [PleatMatter::FoldOverrunsEdge {
            step: 1,
            amount: INCH
        }]
    );
}

/// Cloth that loses 1/4 in at each crease.
fn found_in_thick(rule: &PleatRule, flat: i64) -> Vec<PleatMatter> {
    let rule = PleatRule {
        turn_of_cloth: Some(inches(2)),
        ..rule.clone()
    };
    let laid = lay_out(&rule, None, Some(Length::inches(flat))).unwrap();
    check(&rule, &laid, &fold_pleating(&laid))
}

/// An underfold may stand out by its own bend, half of its turn, and by no more.
#[test]
fn an_underfold_of_thick_cloth_overruns_the_edge_beyond_its_bend() {
    let two = Length::inches(2);
    for (margin, amount) in [(16, None), (15, None), (14, Some(2)), (8, Some(8))] {
        let margin = || plain(inches(margin));
        for (steps, step) in [
            (
                vec![margin(), knife(two, TowardOrder::Right), StepKind::Rest],
                1,
            ),
            (
                vec![StepKind::Rest, knife(two, TowardOrder::Left), margin()],
                1,
            ),
        ] {
            let expected = amount.map(|eighths| PleatMatter::FoldOverrunsEdge {
                step,
                amount: inches(eighths),
            });
            let found = found_in_thick(&from_left(steps), 30);
            assert_eq!(found, Vec::from_iter(expected));
        }
    }
}

/// Folds that meet on the centre line meet there in thick cloth too.
#[test]
fn turns_on_the_way_bring_a_fold_no_further_than_the_centre() {
    let knife = knife(Length::inches(3), TowardOrder::Centre);
    let meeting = from_centre(vec![knife, StepKind::Rest]);
    assert_eq!(found_in_thick(&meeting, 40), []);
}

#[test]
fn an_edge_under_a_wider_fold_lies_inside_it() {
    let two = Length::inches(2);
    let inside = |step| PleatMatter::EdgeInsideFold {
        step,
        fold_at: Length::inches(3),
        taken_up: Length::inches(4),
    };
    let left = from_left(vec![placed(knife(two, TowardOrder::Left), at(24))]);
    assert_eq!(found(&left, 30), [inside(0)]);
    let right = from_left(vec![placed(
        knife(two, TowardOrder::Right),
        FoldPlace::At(Length::inches(27)),
    )]);
    assert_eq!(found(&right, 30), [inside(0)]);
    // A depth that does not even fit between edge and fold is the same mistake.
    let near = from_left(vec![placed(knife(two, TowardOrder::Left), at(8))]);
    assert_eq!(
        found(&near, 30),
        [PleatMatter::EdgeInsideFold {
            step: 0,
            fold_at: INCH,
            taken_up: Length::inches(4),
        }]
    );
}

#[test]
fn placed_pleats_that_need_the_same_cloth_run_together() {
    let left = TowardOrder::Left;
    let rule = from_left(vec![
        placed(knife(INCH, left), FoldPlace::At(Length::inches(6))),
        placed(
            knife(Length::inches(2), left),
            FoldPlace::On(Length::inches(3)),
        ),
        placed(knife(INCH, left), FoldPlace::On(Length::inches(6))),
    ]);
    let expected = PleatMatter::PleatsRunTogether {
        first: 0,
        second: 1,
        ends: Length::inches(6),
        begins: Length::inches(5),
    };
    assert_eq!(found(&rule, 30), [expected]);
}

#[test]
fn placed_pleats_written_in_any_order_are_judged_by_where_they_lie() {
    let left = TowardOrder::Left;
    let rule = from_left(vec![
        placed(knife(INCH, left), FoldPlace::At(Length::inches(12))),
        placed(knife(INCH, left), FoldPlace::At(Length::inches(6))),
    ]);
    assert_eq!(found(&rule, 30), []);
}

#[test]
fn a_repeated_step_is_reported_once_and_where_it_is_worst() {
    let left = TowardOrder::Left;
    let rule = from_left(vec![
        plain(Length::inches(3)),
        repeat(
            Ranged::fixed(6),
            vec![knife(Length::inches(2), left), plain(INCH)],
        ),
        StepKind::Rest,
    ]);
    let matters = found(&rule, 60);
    // Folds 2 in deep lie 1 in apart: three layers, then five all the way, then three.
    let expected = PleatMatter::FoldOnFold {
        step: 2,
        layers: 5,
        intended: 3,
        from: Length::inches(4),
        to: Length::inches(9),
    };
    assert_eq!(matters, [expected]);
    let mut meant = rule;
    meant.layers = Some(5);
    assert_eq!(found(&meant, 60), []);
}

#[test]
fn folds_that_meet_behind_the_centre_are_a_stack() {
    let rule = from_centre(vec![
        plain(INCH),
        knife(Length::inches(2), TowardOrder::Edge),
        StepKind::Rest,
    ]);
    let expected = PleatMatter::FoldOnFold {
        step: 1,
        layers: 5,
        intended: 3,
        from: Length::inches(10),
        to: Length::inches(12),
    };
    assert_eq!(found(&rule, 30), [expected]);
}

#[test]
fn pleats_that_meet_but_for_a_nanometre_are_sound() {
    let third = Length::inch_fraction(10, 3);
    let steps = vec![
        plain(third),
        knife(third + Length::from_nanometres(1), TowardOrder::Left),
    ];
    let rule = from_left(vec![repeat(Ranged::fixed(3), steps), plain(third)]);
    let laid = lay_out(&rule, None, None).unwrap();
    let folded = fold(laid.flat, &laid.creases);
    assert_eq!(folded.thickest, 3);
    assert_eq!(check(&rule, &laid, &folded), []);
}
