//! Pleats that follow the print across.

use pelmet_measure::Length;
use pelmet_model::{
    Fabric, Follow, Match, Matter, PanelOrder, PleatKind, PleatMatter, PleatOrder, PleatRule,
    PleatStep, Ranged, Repeat, StepKind,
};

use crate::sample::{alone, cloth, inches, knives, panel};

fn printed(across: Length) -> Fabric {
    let repeat = Repeat {
        along: None,
        across: Some(across),
        matching: Match::Straight,
    };
    Fabric {
        width: inches(200),
        repeat: Some(repeat),
        ..cloth()
    }
}

fn steps(follow: Follow, depth: Ranged<Length>, space: Ranged<Length>) -> PleatRule {
    let numbered = |number, kind| PleatStep { number, kind };
    let knife = PleatOrder::new(PleatKind::Knife, depth);
    let turn = vec![
        numbered(2, StepKind::Pleat(knife)),
        numbered(3, StepKind::Plain(space)),
    ];
    let margin = Ranged::between(inches(2), inches(30), inches(5));
    PleatRule {
        print: Some(follow),
        steps: vec![
            numbered(0, StepKind::Plain(margin)),
            numbered(
                1,
                StepKind::Repeat {
                    count: Ranged::fixed(5),
                    steps: turn,
                },
            ),
            numbered(4, StepKind::Plain(margin)),
        ],
        ..knives(1, inches(1))
    }
}

fn order(rule: PleatRule, finished: i64) -> PanelOrder {
    let mut order = PanelOrder {
        pleats: Some(rule),
        ..panel()
    };
    order.width = pelmet_model::WidthOrder {
        finished: Some(pelmet_model::FinishedOrder::Exact(inches(finished))),
        ..pelmet_model::WidthOrder::default()
    };
    order
}

/// The distances from the middle of one pleat to the next on the flat cloth.
fn apart(rule: PleatRule, finished: i64, cloth: &Fabric) -> Vec<Length> {
    let (made, _) = alone(&order(rule, finished), cloth);
    let made = made.unwrap();
    assert_eq!(made.finished, inches(finished));
    let pleats = &made.pleating.pleats;
    let after = pleats.iter().skip(1);
    pleats
        .iter()
        .zip(after)
        .map(|(one, next)| next.from - one.from)
        .collect()
}

#[test]
fn the_same_part_of_the_print_shows_on_every_pleat() {
    let one = Ranged::fixed(inches(1));
    let open = |least, most, ideal| Ranged::between(inches(least), inches(most), inches(ideal));
    for (follow, depth, space, across, expected) in [
        (Follow::Spaces, one, open(2, 9, 4), 5, 5),
        (Follow::Spaces, one, open(2, 9, 4), 3, 6),
        (Follow::Spaces, one, open(2, 9, 6), 3, 9),
        (
            Follow::Depths,
            open(1, 3, 1),
            Ranged::fixed(inches(4)),
            4,
            8,
        ),
        (
            Follow::Depths,
            open(1, 3, 1),
            Ranged::fixed(inches(4)),
            6,
            6,
        ),
    ] {
        let rule = steps(follow, depth, space);
        let cloth = printed(inches(across));
        assert_eq!(
            apart(rule, 60, &cloth),
            vec![inches(expected); 4],
            "{follow:?} {across}"
        );
    }
}

#[test]
fn a_print_that_never_comes_round_is_told_with_the_nearest_lengths() {
    let one = Ranged::fixed(inches(1));
    let space = Ranged::between(inches(3), inches(5), inches(4));
    let rule = steps(Follow::Spaces, one, space);
    let found = |cloth: &Fabric| alone(&order(rule.clone(), 60), cloth).1;
    let missed = PleatMatter::PrintOutOfReach {
        step: 3,
        times: 1,
        besides: inches(2),
        repeat: inches(4),
        below: Some(inches(2)),
        above: inches(6),
    };
    assert!(found(&printed(inches(4))).contains(&Matter::Pleats(missed)));
    assert!(found(&cloth()).contains(&Matter::Pleats(PleatMatter::NoPrintAcross)));
}

/// Plain cloth that ends a repeat lies between its turns; made once, it has none to bring round.
#[test]
fn a_repeat_made_once_has_no_space_to_follow_the_print() {
    let inch = Ranged::fixed(inches(1));
    let mut rule = steps(Follow::Spaces, inch, inch);
    if let Some(StepKind::Repeat { count, .. }) = rule.steps.get_mut(1).map(|step| &mut step.kind) {
        *count = Ranged::fixed(1);
    }
    let (made, matters) = alone(&order(rule, 10), &printed(inches(7)));
    assert_eq!(matters, []);
    assert_eq!(made.unwrap().pleating.pleats.len(), 1);
}

#[test]
fn cloth_that_takes_what_is_left_follows_the_print_between_two_pleats() {
    let inch = Ranged::fixed(inches(1));
    let mut rule = steps(Follow::Spaces, inch, inch);
    if let Some(StepKind::Repeat { steps, .. }) = rule.steps.get_mut(1).map(|step| &mut step.kind) {
        let space = steps.last_mut().unwrap();
        space.kind = StepKind::Rest;
    }
    // The pleats stand a repeat of 7 in apart from middle to middle.
    assert_eq!(apart(rule, 40, &printed(inches(7))), vec![inches(7); 4]);
}
