//! The checker finds every kind of broken promise.

#![expect(
    clippy::indexing_slicing,
    clippy::arithmetic_side_effects,
    reason = "a test stops at the first broken promise"
)]

mod common;

use common::{LITTLE, any_job, any_length, mm, plain_cloth, plain_piece};
use pelmet_bolt::{
    BoltUsed, Cloth, Direction, Fault, Flaw, Layout, Piece, Placed, Section, check, lay_with,
};
use pelmet_measure::Length;
use proptest::prelude::*;

/// Printed one-way cloth with an end, and pieces that take two bolts of it.
fn scene() -> (Cloth, Vec<Piece>) {
    let cloth = Cloth {
        gap: mm(10),
        repeat_along: Some(mm(320)),
        repeat_across: Some(mm(230)),
        one_way: true,
        bolt_length: Some(mm(2100)),
        flaws: vec![Flaw {
            bolt: 1,
            from: mm(100),
            to: mm(400),
            left: mm(1000),
            right: mm(1200),
        }],
        ..plain_cloth(mm(1370))
    };
    let pieces = vec![
        Piece {
            phase_along: Some(mm(60)),
            phase_across: Some(mm(100)),
            ..plain_piece(mm(450), mm(700), 3)
        },
        Piece {
            phase_along: Some(mm(200)),
            ..plain_piece(mm(300), mm(650), 4)
        },
        plain_piece(mm(200), mm(300), 5),
    ];
    (cloth, pieces)
}

/// A sound layout of the scene: (piece, copy, bolt, across, along) in millimetres.
fn sound() -> Layout {
    let places = [
        (0, 0, 0, 130, 260),
        (0, 1, 0, 590, 260),
        (1, 0, 0, 1050, 440),
        (0, 2, 0, 130, 1220),
        (1, 1, 0, 590, 1080),
        (1, 2, 0, 1050, 1400),
        (1, 3, 1, 0, 120),
        (2, 0, 1, 310, 0),
        (2, 1, 1, 520, 0),
        (2, 2, 1, 730, 0),
        (2, 3, 1, 310, 310),
        (2, 4, 1, 520, 310),
    ];
    let placed = places.map(|(piece, copy, bolt, across, along)| Placed {
        piece,
        copy,
        bolt,
        across: mm(across),
        along: mm(along),
        turned: false,
    });
    Layout {
        placed: placed.to_vec(),
        bolts: vec![
            BoltUsed {
                exact: mm(2050),
                bought: mm(2100),
            },
            BoltUsed {
                exact: mm(770),
                bought: mm(800),
            },
        ],
        sections: Vec::new(),
        exact: mm(2820),
        bought: mm(2900),
        rule_of_thumb: mm(4000),
        at_least: mm(1500),
        stopped_early: false,
    }
}

#[test]
fn the_sound_layout_has_no_fault() {
    let (cloth, pieces) = scene();
    assert_eq!(check(&cloth, &pieces, &sound()), []);
}

/// (what is broken, how, the fault it must give).
type Breakage = (&'static str, fn(&mut Layout), Fault);

const BREAKAGES: &[Breakage] = &[
    (
        "a piece nobody ordered",
        |layout| layout.placed[3].piece = 9,
        Fault::NotToBeCut { placed: 3 },
    ),
    (
        "a copy nobody ordered",
        |layout| layout.placed[3].copy = 3,
        Fault::NotToBeCut { placed: 3 },
    ),
    (
        "the same copy twice",
        |layout| layout.placed[3].copy = 0,
        Fault::CutTwice { placed: 3 },
    ),
    (
        "a copy left out",
        |layout| layout.placed.truncate(11),
        Fault::WrongQuantity {
            piece: 2,
            wanted: 5,
            found: 4,
        },
    ),
    (
        "past the left edge",
        |layout| layout.placed[6].across = Length::from_nanometres(-1),
        Fault::OutsideWidth { placed: 6 },
    ),
    (
        "past the right edge",
        |layout| layout.placed[6].across = mm(1070) + Length::from_nanometres(1),
        Fault::OutsideWidth { placed: 6 },
    ),
    (
        "on a flaw",
        |layout| layout.placed[9].across = mm(800) + Length::from_nanometres(1),
        Fault::OnFlaw { placed: 9, flaw: 0 },
    ),
    (
        "before the start of the bolt",
        |layout| layout.placed[7].along = Length::from_nanometres(-1),
        Fault::OutsideBolt { placed: 7 },
    ),
    (
        "past the end of the bolt",
        |layout| layout.placed[3].along = mm(1220 + 320),
        Fault::OutsideBolt { placed: 3 },
    ),
    (
        "on a bolt that is not counted",
        |layout| layout.placed[11].bolt = 2,
        Fault::UnknownBolt { placed: 11 },
    ),
    (
        "a bolt that is not used",
        |layout| layout.bolts.push(BoltUsed::default()),
        Fault::WrongBolt { bolt: 2 },
    ),
    (
        "over each other by a nanometre",
        |layout| layout.placed[10].along = mm(300) - Length::from_nanometres(1),
        Fault::Overlap {
            first: 7,
            second: 10,
        },
    ),
    (
        "in the same place",
        |layout| layout.placed[8].across = mm(310),
        Fault::Overlap {
            first: 7,
            second: 8,
        },
    ),
    (
        "too close along by a nanometre",
        |layout| layout.placed[10].along = mm(310) - Length::from_nanometres(1),
        Fault::TooClose {
            first: 7,
            second: 10,
        },
    ),
    (
        "too close across by a nanometre",
        |layout| layout.placed[9].across = mm(730) - Length::from_nanometres(1),
        Fault::TooClose {
            first: 8,
            second: 9,
        },
    ),
    (
        "too close corner to corner",
        |layout| {
            layout.placed[10].across = mm(939);
            layout.placed[10].along = mm(309);
        },
        Fault::TooClose {
            first: 9,
            second: 10,
        },
    ),
    (
        "off the repeat along",
        |layout| layout.placed[6].along = mm(121),
        Fault::OffRepeat {
            placed: 6,
            direction: Direction::Along,
        },
    ),
    (
        "off the repeat across",
        |layout| layout.placed[0].across = mm(129),
        Fault::OffRepeat {
            placed: 0,
            direction: Direction::Across,
        },
    ),
    (
        "turned on one-way cloth",
        |layout| layout.placed[7].turned = true,
        Fault::TurnedOneWay { placed: 7 },
    ),
    (
        "a bolt's length understated",
        |layout| layout.bolts[0].exact = mm(2000),
        Fault::WrongBolt { bolt: 0 },
    ),
    (
        "too little bought of a bolt",
        |layout| layout.bolts[1].bought = mm(700),
        Fault::WrongBolt { bolt: 1 },
    ),
    (
        "a step too much bought of a bolt",
        |layout| layout.bolts[1].bought = mm(900),
        Fault::WrongBolt { bolt: 1 },
    ),
    (
        "not a whole step bought of a bolt",
        |layout| layout.bolts[1].bought = mm(790),
        Fault::WrongBolt { bolt: 1 },
    ),
    (
        "a wrong total used",
        |layout| layout.exact = mm(2819),
        Fault::WrongTotal,
    ),
    (
        "a wrong total bought",
        |layout| layout.bought = mm(2700),
        Fault::WrongTotal,
    ),
    (
        "longer than the rule of thumb",
        |layout| layout.rule_of_thumb = mm(2819),
        Fault::LongerThanRule,
    ),
    (
        "shorter than the bound",
        |layout| layout.at_least = mm(2821),
        Fault::ShorterThanBound,
    ),
];

#[test]
fn every_breakage_gives_its_fault() {
    let (cloth, pieces) = scene();
    for (name, breaks, fault) in BREAKAGES {
        let mut layout = sound();
        breaks(&mut layout);
        let faults = check(&cloth, &pieces, &layout);
        assert!(faults.contains(fault), "{name}: {faults:?}");
        assert!(!fault.to_string().is_empty());
    }
}

#[test]
fn a_turned_piece_carries_its_point_to_the_other_end() {
    let cloth = Cloth {
        repeat_along: Some(mm(320)),
        ..plain_cloth(mm(500))
    };
    let piece = Piece {
        phase_along: Some(mm(60)),
        ..plain_piece(mm(500), mm(700), 1)
    };
    let pieces = [piece];
    let mut layout = lay_with(&cloth, &pieces, LITTLE).unwrap();
    layout.placed[0].turned = true;
    let off = Fault::OffRepeat {
        placed: 0,
        direction: Direction::Along,
    };
    assert!(check(&cloth, &pieces, &layout).contains(&off));
    // Turned, the point lies 640 mm from the edge that comes first: two repeats.
    layout.placed[0].along = Length::ZERO;
    assert!(!check(&cloth, &pieces, &layout).contains(&off));
}

#[test]
fn a_half_drop_is_checked_by_column_and_by_copy() {
    let by_copy = Cloth {
        repeat_along: Some(mm(100)),
        half_drop: true,
        ..plain_cloth(mm(500))
    };
    let by_column = Cloth {
        repeat_across: Some(mm(250)),
        ..by_copy.clone()
    };
    let copies = [Piece {
        phase_along: Some(mm(0)),
        ..plain_piece(mm(200), mm(100), 2)
    }];
    let columns = [Piece {
        phase_across: Some(mm(0)),
        ..copies[0].clone()
    }];
    for (cloth, pieces) in [(by_copy, copies), (by_column, columns)] {
        let mut layout = lay_with(&cloth, &pieces, LITTLE).unwrap();
        assert_eq!(check(&cloth, &pieces, &layout), []);
        let second = layout
            .placed
            .iter()
            .position(|it| it.along == mm(50))
            .unwrap();
        layout.placed[second].along = mm(100);
        let off = Fault::OffRepeat {
            placed: second,
            direction: Direction::Along,
        };
        assert!(check(&cloth, &pieces, &layout).contains(&off));
    }
}

fn any_placed() -> impl Strategy<Value = Placed> {
    (
        0..4_usize,
        0..6_u32,
        0..3_u32,
        any_length(),
        any_length(),
        any::<bool>(),
    )
        .prop_map(|(piece, copy, bolt, across, along, turned)| Placed {
            piece,
            copy,
            bolt,
            across,
            along,
            turned,
        })
}

/// Whether any two pieces of a gap-less layout have cloth in common, compared pair by pair.
fn any_overlap(pieces: &[Piece], placed: &[Placed]) -> bool {
    let overlap = |one: &Placed, other: &Placed| {
        one.bolt == other.bolt
            && one.across < other.across + pieces[other.piece].width
            && other.across < one.across + pieces[one.piece].width
            && one.along < other.along + pieces[other.piece].length
            && other.along < one.along + pieces[one.piece].length
    };
    (0..placed.len()).any(|one| (0..one).any(|other| overlap(&placed[one], &placed[other])))
}

proptest! {
    #![proptest_config(ProptestConfig {
        cases: 1000,
        failure_persistence: None,
        max_global_rejects: 20_000,
        ..ProptestConfig::default()
    })]

    #[test]
    fn an_overlap_is_found_exactly_where_there_is_one(
        sizes in prop::collection::vec((1..5_i64, 1..5_i64), 1..4),
        places in prop::collection::vec((0..3_usize, 0..2_u32, 0..12_i64, 0..12_i64), 0..9),
    ) {
        let pieces: Vec<Piece> = sizes
            .iter()
            .map(|(width, length)| plain_piece(mm(*width), mm(*length), 99))
            .collect();
        let placed: Vec<Placed> = (0..)
            .zip(&places)
            .map(|(copy, (piece, bolt, across, along))| Placed {
                piece: piece % pieces.len(),
                copy,
                bolt: *bolt,
                across: mm(*across),
                along: mm(*along),
                turned: false,
            })
            .collect();
        let layout = Layout { placed, ..sound() };
        let faults = check(&plain_cloth(mm(20)), &pieces, &layout);
        let found = faults.iter().any(|fault| matches!(fault, Fault::Overlap { .. }));
        prop_assert_eq!(found, any_overlap(&pieces, &layout.placed));
    }

    #[test]
    fn a_piece_moved_onto_another_is_found((cloth, pieces) in any_job(), pick in any::<[usize; 2]>()) {
        if let Ok(mut layout) = lay_with(&cloth, &pieces, LITTLE)
            && layout.placed.len() > 1
        {
            let [one, other] = pick.map(|pick| pick % layout.placed.len());
            prop_assume!(one != other);
            let onto = layout.placed[other];
            layout.placed[one].bolt = onto.bolt;
            layout.placed[one].across = onto.across;
            layout.placed[one].along = onto.along;
            let faults = check(&cloth, &pieces, &layout);
            let overlaps = faults.iter().any(|fault| matches!(fault, Fault::Overlap { .. }));
            prop_assert!(overlaps, "{faults:?}");
        }
    }

    #[test]
    fn only_a_held_piece_moved_by_a_nanometre_is_off_the_repeat((cloth, pieces) in any_job(), pick in any::<usize>()) {
        if let Ok(mut layout) = lay_with(&cloth, &pieces, LITTLE)
            && !layout.placed.is_empty()
        {
            let placed = pick % layout.placed.len();
            let it = &mut layout.placed[placed];
            let held = pieces[it.piece].phase_along.is_some();
            it.along += Length::from_nanometres(1);
            let off = Fault::OffRepeat { placed, direction: Direction::Along };
            prop_assert_eq!(check(&cloth, &pieces, &layout).contains(&off), held);
        }
    }

    #[test]
    fn no_layout_is_too_odd_to_check(
        (cloth, pieces) in any_job(),
        placed in prop::collection::vec(any_placed(), 0..9),
        lengths in prop::array::uniform4(any_length()),
        bolts in prop::collection::vec((any_length(), any_length()), 0..3),
        sections in prop::collection::vec((0..3_u32, prop::array::uniform4(any_length())), 0..3),
    ) {
        let [exact, bought, rule_of_thumb, at_least] = lengths;
        let sections = sections
            .into_iter()
            .map(|(bolt, [from, to, left, right])| Section {
                bolt,
                from,
                to,
                left_fold: Some(left),
                right_fold: Some(right),
            })
            .collect();
        let bolts = bolts
            .into_iter()
            .map(|(exact, bought)| BoltUsed { exact, bought })
            .collect();
        let layout = Layout { placed, bolts, sections, exact, bought, rule_of_thumb, at_least, stopped_early: false };
        let _ = check(&cloth, &pieces, &layout);
    }
}
