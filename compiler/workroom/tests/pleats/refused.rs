//! Rules that cannot be laid out, and what is said of them.

use pelmet_measure::Length;
use pelmet_model::{
    FoldPlace, MAXIMUM_PLEATS, PleatKind, PleatMatter, PleatRule, Ranged, Start, StepKind,
    TowardOrder,
};
use pelmet_workroom::{ROUNDING, lay_out};

use crate::rules::*;

const INCH: Length = Length::INCH;

fn refusal(rule: &PleatRule, finished: Option<i64>, flat: Option<i64>) -> PleatMatter {
    lay_out(rule, finished.map(Length::inches), flat.map(Length::inches)).unwrap_err()
}

fn left() -> StepKind {
    knife(INCH, TowardOrder::Left)
}

#[test]
fn a_width_is_missing_where_one_would_settle_something() {
    let rules = [
        vec![any_number(vec![left()])],
        vec![left(), StepKind::Rest],
        vec![repeat(Ranged::fixed(2), vec![StepKind::Rest, left()])],
        vec![placed(left(), FoldPlace::At(Length::inches(4)))],
    ];
    for steps in rules {
        assert_eq!(
            refusal(&from_left(steps), None, None),
            PleatMatter::WidthMissing
        );
    }
}

/// A placed fold lies in the middle of its turn, and half of that lies beyond it.
#[test]
fn half_a_turn_beyond_a_placed_fold_needs_cloth_too() {
    let rule = PleatRule {
        turn_of_cloth: Some(inches(2)),
        ..from_left(vec![placed(left(), FoldPlace::At(Length::inches(4)))])
    };
    let needed = Length::inches(4) + inches(1);
    for (flat, fits) in [(needed, true), (needed - ROUNDING * 4, false)] {
        assert_eq!(lay_out(&rule, None, Some(flat)).is_ok(), fits, "{flat:?}");
    }
}

/// 1 in plain, a knife of 2 x 1 in, 1 to 2 in plain, and two turns of 1/4 in.
#[test]
fn the_nearest_widths_count_what_is_lost_in_turns() {
    let rule = PleatRule {
        turn_of_cloth: Some(inches(2)),
        ..from_left(vec![plain(INCH), left(), open(INCH, INCH * 2, INCH)])
    };
    let least = inches(8 + 2 * 8 + 8 + 2 * 2);
    let most = inches(8 + 2 * 8 + 16 + 2 * 2);
    for (wanted, below, above) in [(3, None, Some((least, 1))), (9, Some((most, 1)), None)] {
        let expected = PleatMatter::NoFit {
            wanted: Length::inches(wanted),
            finished: false,
            below,
            above,
        };
        assert_eq!(refusal(&rule, None, Some(wanted)), expected);
    }
}

#[test]
fn the_nearest_widths_that_work_are_told() {
    let space = || open(Length::inches(3), Length::inches(4), inches(28));
    let rule = from_left(vec![
        plain(Length::inches(2)),
        any_number(vec![left(), space()]),
        plain(Length::inches(2)),
    ]);
    // n pleats hang 4 + 3(n-1) to 4 + 4(n-1) wide: 4; 7 to 8; 10 to 12; 13 to 16; then all.
    let cases = [(9, 8, 2, 10, 3), (6, 4, 1, 7, 2)];
    for (wanted, below, below_pleats, above, above_pleats) in cases {
        let expected = PleatMatter::NoFit {
            wanted: Length::inches(wanted),
            finished: true,
            below: Some((Length::inches(below), below_pleats)),
            above: Some((Length::inches(above), above_pleats)),
        };
        assert_eq!(refusal(&rule, Some(wanted), None), expected);
    }
    let expected = PleatMatter::NoFit {
        wanted: Length::inches(3),
        finished: true,
        below: None,
        above: Some((Length::inches(4), 1)),
    };
    assert_eq!(refusal(&rule, Some(3), None), expected);
}

#[test]
fn widths_of_a_mirrored_rule_are_those_of_the_panel() {
    let rule = from_centre(vec![
        plain(Length::inches(3)),
        left(),
        plain(Length::inches(4)),
    ]);
    let expected = PleatMatter::NoFit {
        wanted: Length::inches(20),
        finished: false,
        below: Some((Length::inches(18), 2)),
        above: None,
    };
    assert_eq!(refusal(&rule, None, Some(20)), expected);
}

#[test]
fn widths_of_a_one_sided_rule_are_those_of_the_panel() {
    let steps = vec![plain(Length::inches(3)), left(), plain(Length::inches(4))];
    let rule = rule(Start::Centre, false, steps);
    let no_fit = |wanted, finished, works| PleatMatter::NoFit {
        wanted: Length::inches(wanted),
        finished,
        below: Some((Length::inches(works), 1)),
        above: None,
    };
    assert_eq!(refusal(&rule, None, Some(20)), no_fit(20, false, 18));
    assert_eq!(refusal(&rule, Some(17), None), no_fit(17, true, 16));
}

#[test]
fn a_flat_width_too_small_for_the_rest_names_the_least() {
    let rule = from_left(vec![plain(Length::inches(5)), left(), StepKind::Rest]);
    let expected = PleatMatter::NoFit {
        wanted: Length::inches(6),
        finished: false,
        below: None,
        above: Some((Length::inches(7), 1)),
    };
    assert_eq!(refusal(&rule, None, Some(6)), expected);
}

#[test]
fn widths_that_contradict_each_other_name_the_nearest_take_up() {
    let depth = Ranged::between(INCH, Length::inches(2), INCH);
    let knives = pleat(pointing(PleatKind::Knife, TowardOrder::Left), depth);
    let spaces = open(Length::ZERO, Length::inches(90), INCH);
    let rule = from_left(vec![
        repeat(Ranged::fixed(5), vec![spaces.clone(), knives]),
        spaces,
    ]);
    let contradiction = |flat, take_up| PleatMatter::WidthsContradict {
        flat: Length::inches(flat),
        finished: Length::inches(30),
        take_up: Length::inches(take_up),
        turn: Length::ZERO,
    };
    assert_eq!(refusal(&rule, Some(30), Some(55)), contradiction(55, 20));
    assert_eq!(refusal(&rule, Some(30), Some(36)), contradiction(36, 10));
    assert!(lay_out(&rule, Some(Length::inches(30)), Some(Length::inches(45))).is_ok());
}

#[test]
fn a_finished_width_that_never_fits_is_no_contradiction() {
    let rule = from_left(vec![plain(INCH), left(), plain(INCH)]);
    let expected = PleatMatter::NoFit {
        wanted: Length::inches(5),
        finished: true,
        below: Some((Length::inches(2), 1)),
        above: None,
    };
    assert_eq!(refusal(&rule, Some(5), Some(7)), expected);
}

#[test]
fn placed_pleats_that_take_more_cloth_than_there_is_are_refused() {
    let rule = from_centre(vec![
        placed(left(), FoldPlace::At(Length::inches(9))),
        plain(Length::inches(4)),
    ]);
    let taken = |flat| PleatMatter::TakesTooMuch {
        flat: Length::inches(flat),
        taken: Length::inches(26),
    };
    assert_eq!(refusal(&rule, None, Some(24)), taken(24));
    assert_eq!(refusal(&rule, Some(18), None), taken(22));
    assert!(lay_out(&rule, None, Some(Length::inches(26))).is_ok());
}

#[test]
fn plain_cloth_that_a_placed_pleat_needs_is_refused() {
    let rule = from_left(vec![
        plain(Length::inches(5)),
        placed(left(), FoldPlace::At(Length::inches(6))),
    ]);
    let expected = PleatMatter::PleatsRunTogether {
        first: 0,
        second: 1,
        ends: Length::inches(5),
        begins: Length::inches(4),
    };
    assert_eq!(refusal(&rule, None, Some(40)), expected);
}

#[test]
fn too_many_pleats_name_the_step_that_asks_for_them() {
    let limit = MAXIMUM_PLEATS;
    let many = |count| repeat(Ranged::fixed(count), vec![left()]);
    let cases = [
        (from_left(vec![many(limit + 1)]), 0),
        (from_left(vec![plain(INCH), many(limit), left()]), 3),
        (
            from_left(vec![
                plain(INCH),
                repeat(Ranged::fixed(limit), vec![many(u32::MAX)]),
            ]),
            1,
        ),
        (from_centre(vec![plain(INCH), many(limit / 2 + 1)]), 1),
        (
            from_left(vec![repeat(
                Ranged::fixed(u32::MAX),
                vec![plain(INCH), StepKind::Rest],
            )]),
            0,
        ),
    ];
    for (rule, step) in cases {
        let found = refusal(&rule, Some(40), None);
        assert!(
            matches!(found, PleatMatter::TooManyPleats { step: at, limit: most }
            if at == step && most == limit),
            "{found:?}"
        );
    }
    assert!(lay_out(&from_left(vec![many(limit)]), None, None).is_ok());
}
