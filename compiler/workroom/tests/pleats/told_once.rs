//! One mistake is told once, for the pleat that makes it and where it is worst.

use pelmet_measure::Length;
use pelmet_model::{FoldPlace, PleatMatter, PleatRule, Ranged, Start, StepKind, TowardOrder};
use pelmet_workroom::{check, fold, lay_out};

use crate::rules::*;

const INCH: Length = Length::INCH;

fn found(rule: &PleatRule, flat: i64) -> Vec<PleatMatter> {
    let laid = lay_out(rule, None, Some(Length::inches(flat))).unwrap();
    check(rule, &laid, &fold(laid.flat, &laid.creases))
}

fn left(depth: i64) -> StepKind {
    knife(Length::inches(depth), TowardOrder::Left)
}

fn right(depth: i64) -> StepKind {
    knife(Length::inches(depth), TowardOrder::Right)
}

fn at(inches: i64) -> FoldPlace {
    FoldPlace::At(Length::inches(inches))
}

fn run_together(first: usize, second: usize, ends: i64, begins: i64) -> PleatMatter {
    run_together_eighths(first, second, ends * 8, begins * 8)
}

fn run_together_eighths(first: usize, second: usize, ends: i64, begins: i64) -> PleatMatter {
    PleatMatter::PleatsRunTogether {
        first,
        second,
        ends: inches(ends),
        begins: inches(begins),
    }
}

#[test]
fn a_pleat_runs_into_the_one_before_it_that_reaches_furthest() {
    let cases = [
        (
            "the one just before it",
            vec![
                placed(left(1), at(4)),
                placed(left(1), at(12)),
                placed(left(1), at(13)),
            ],
            vec![run_together(1, 2, 12, 11)],
        ),
        (
            "one that reaches over a smaller one",
            vec![
                placed(left(3), at(12)),
                placed(left(1), at(11)),
                placed(left(1), at(13)),
            ],
            vec![run_together(0, 1, 12, 9), run_together(0, 2, 12, 11)],
        ),
        (
            "of two that reach as far, the one that begins first",
            vec![
                placed(left(3), at(12)),
                placed(left(1), at(12)),
                placed(left(1), at(13)),
            ],
            vec![run_together(0, 1, 12, 10), run_together(0, 2, 12, 11)],
        ),
    ];
    for (name, steps, expected) in cases {
        assert_eq!(found(&from_left(steps), 30), expected, "{name}");
    }
}

#[test]
fn where_pleats_run_together_is_measured_from_where_their_rule_starts() {
    let edge = |at| placed(knife(INCH, TowardOrder::Edge), at);
    let steps = || vec![edge(at(6)), edge(FoldPlace::On(inches(12)))];
    let found_together = |mut rule: PleatRule| {
        rule.layers = Some(9);
        found(&rule, 40)
    };
    let expected = [run_together_eighths(0, 1, 64, 60)];
    assert_eq!(found_together(from_centre(steps())), expected);
    let one_half = rule(Start::Centre, false, steps());
    assert_eq!(found_together(one_half), expected);
}

/// Each of the first two covers an edge; the last, which covers the right one too and makes a stack,
/// only lies where it does because it runs into its neighbour.
#[test]
fn a_pleat_astray_is_not_blamed_for_what_follows_from_it() {
    let rule = from_left(vec![
        placed(left(2), at(3)),
        placed(right(2), at(22)),
        placed(right(3), at(25)),
    ]);
    let edge = |step, fold_at, taken_up| PleatMatter::EdgeInsideFold {
        step,
        fold_at: Length::inches(fold_at),
        taken_up: Length::inches(taken_up),
    };
    let expected = [run_together(1, 2, 26, 25), edge(0, 3, 4), edge(1, 8, 10)];
    assert_eq!(found(&rule, 30), expected);
}

#[test]
fn a_repeated_pleat_that_overruns_both_edges_is_told_for_the_worse() {
    for (first, last) in [(2, 1), (1, 2)] {
        let pleat = inverted(Length::inches(3), None);
        let turns = repeat(Ranged::fixed(2), vec![pleat, plain(Length::inches(9))]);
        let margins = [first, last].map(|inches| plain(Length::inches(inches)));
        let [before, behind] = margins;
        let rule = from_left(vec![before, turns, behind]);
        let overrun = PleatMatter::FoldOverrunsEdge {
            step: 2,
            amount: Length::inches(2),
        };
        assert_eq!(found(&rule, 36), [overrun]);
    }
}

#[test]
fn the_pleat_that_overruns_the_edge_is_the_one_that_reaches_it() {
    let shallow = knife(inches(2), TowardOrder::Right);
    let rule = from_left(vec![
        plain(INCH),
        shallow,
        plain(INCH),
        right(3),
        StepKind::Rest,
    ]);
    let overrun = PleatMatter::FoldOverrunsEdge {
        step: 3,
        amount: INCH,
    };
    let mut thick = rule;
    thick.layers = Some(9);
    assert_eq!(found(&thick, 30), [overrun]);
}

#[test]
fn a_rule_of_one_half_can_cross_the_centre_too() {
    let steps = vec![placed(knife(Length::inches(2), TowardOrder::Centre), at(1))];
    let rule = rule(Start::Centre, false, steps);
    let crossing = PleatMatter::FoldCrossesCentre {
        step: 0,
        amount: Length::inches(3),
        fold_at: INCH,
        taken_up: Length::inches(4),
    };
    assert_eq!(found(&rule, 40), [crossing]);
}

fn stack(step: usize, from: i64, to: i64) -> PleatMatter {
    PleatMatter::FoldOnFold {
        step,
        layers: 5,
        intended: 3,
        from: Length::inches(from),
        to: Length::inches(to),
    }
}

/// Two knives 2 in deep with an inch between them lie an inch on one another.
fn crowded() -> [StepKind; 3] {
    [left(2), plain(INCH), left(2)]
}

#[test]
fn a_stack_is_told_for_its_own_pleat_and_of_like_stacks_the_first() {
    let four = || plain(Length::inches(4));
    let sound = || vec![four(), left(1), four()];
    let pair = crowded().to_vec();
    let twice = repeat(
        Ranged::fixed(2),
        [crowded().to_vec(), vec![four()]].concat(),
    );
    let cases = [
        (
            "behind a sound pleat",
            [sound(), pair.clone()].concat(),
            stack(3, 9, 10),
        ),
        (
            "just where a sound pleat ends",
            vec![four(), left(2), plain(Length::inches(2)), left(1), left(1)],
            stack(3, 6, 7),
        ),
        ("twice", vec![four(), twice], stack(2, 5, 6)),
        (
            "before a sound pleat",
            [vec![four()], pair, sound()].concat(),
            stack(1, 5, 6),
        ),
    ];
    for (name, steps, expected) in cases {
        let rule = from_left([steps, vec![StepKind::Rest]].concat());
        assert_eq!(found(&rule, 60), [expected], "{name}");
    }
}

#[test]
fn of_a_stack_and_its_mirror_image_the_one_written_down_is_told() {
    let edge = || knife(Length::inches(2), TowardOrder::Edge);
    let steps = vec![
        plain(Length::inches(6)),
        edge(),
        plain(INCH),
        edge(),
        StepKind::Rest,
    ];
    // Half of 60 in less 8 taken up is 22 in; the folds point away from the centre.
    let matters = found(&from_centre(steps), 60);
    let [PleatMatter::FoldOnFold { from, to, .. }] = matters[..] else {
        panic!("{matters:?}");
    };
    assert!(from > Length::inches(22) && to > from, "{from:?}");
}

/// What lies under a pleat astray is its doing; a stack elsewhere is not.
#[test]
fn a_stack_far_from_a_pleat_astray_is_told_as_well() {
    let astray = vec![placed(left(1), at(4)), placed(left(1), at(5))];
    let far = |inches| vec![placed(left(2), at(inches)), placed(left(2), at(inches + 5))];
    let (before, behind) = (
        [far(30), astray.clone()].concat(),
        [astray, far(30)].concat(),
    );
    for (steps, first, stacked) in [(before, 2, 0), (behind, 0, 2)] {
        let matters = found(&from_left(steps), 60);
        assert_eq!(matters.len(), 2, "{matters:?}");
        assert_eq!(matters[0], run_together(first, first + 1, 4, 3));
        assert!(
            matches!(matters[1], PleatMatter::FoldOnFold { step, .. } if step == stacked),
            "{matters:?}"
        );
    }
}
