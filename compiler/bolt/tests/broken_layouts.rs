//! The checker finds every kind of broken promise.

#![expect(
    clippy::indexing_slicing,
    reason = "a test stops at the first broken promise"
)]

mod common;

use common::{LITTLE, mm, plain_cloth, plain_piece};
use pelmet_bolt::{
    BoltDirection, BoltFlaw, BoltLengths, CheckerFinding, Layout, LayoutCloth, LayoutPiece,
    Orientation, Placed, check, lay_with,
};
use pelmet_measure::Length;

/// Printed one-way cloth with an end, and pieces that take two bolts of it.
fn scene() -> (LayoutCloth, Vec<LayoutPiece>) {
    let cloth = LayoutCloth {
        gap: mm(10),
        repeat_along: Some(mm(320)),
        repeat_across: Some(mm(230)),
        one_way: true,
        bolt_length: Some(mm(2100)),
        flaws: vec![BoltFlaw {
            bolt: 1,
            from: mm(100),
            to: mm(400),
            left: mm(1000),
            right: mm(1200),
        }],
        ..plain_cloth(mm(1370))
    };
    let pieces = vec![
        LayoutPiece {
            phase_along: Some(mm(60)),
            phase_across: Some(mm(100)),
            ..plain_piece(mm(450), mm(700), 3)
        },
        LayoutPiece {
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
        orientation: Orientation::Upright,
    });
    Layout {
        placed: placed.to_vec(),
        bolts: vec![
            BoltLengths {
                exact: mm(2050),
                bought: mm(2100),
            },
            BoltLengths {
                exact: mm(770),
                bought: mm(800),
            },
        ],
        sections: Vec::new(),
        exact: mm(2820),
        bought: mm(2900),
        rule_of_thumb: mm(4000),
        lower_bound: mm(1500),
        stopped_early: false,
    }
}

#[test]
fn the_sound_layout_gives_no_finding() {
    let (cloth, pieces) = scene();
    assert_eq!(check(&cloth, &pieces, &sound()), []);
}

/// (what is broken, how, the finding it must give).
type Breakage = (&'static str, fn(&mut Layout), CheckerFinding);

const BREAKAGES: &[Breakage] = &[
    (
        "a piece nobody ordered",
        |layout| layout.placed[3].piece = 9,
        CheckerFinding::NotToBeCut { placed: 3 },
    ),
    (
        "a copy nobody ordered",
        |layout| layout.placed[3].copy = 3,
        CheckerFinding::NotToBeCut { placed: 3 },
    ),
    (
        "the same copy twice",
        |layout| layout.placed[3].copy = 0,
        CheckerFinding::CutTwice { placed: 3 },
    ),
    (
        "a copy left out",
        |layout| layout.placed.truncate(11),
        CheckerFinding::WrongQuantity {
            piece: 2,
            wanted: 5,
            found: 4,
        },
    ),
    (
        "past the left edge",
        |layout| layout.placed[6].across = Length::from_nanometres(-1),
        CheckerFinding::OutsideWidth { placed: 6 },
    ),
    (
        "past the right edge",
        |layout| layout.placed[6].across = mm(1070) + Length::from_nanometres(1),
        CheckerFinding::OutsideWidth { placed: 6 },
    ),
    (
        "on a flaw",
        |layout| layout.placed[9].across = mm(800) + Length::from_nanometres(1),
        CheckerFinding::OnFlaw { placed: 9, flaw: 0 },
    ),
    (
        "before the start of the bolt",
        |layout| layout.placed[7].along = Length::from_nanometres(-1),
        CheckerFinding::OutsideBolt { placed: 7 },
    ),
    (
        "past the end of the bolt",
        |layout| layout.placed[3].along = mm(1220 + 320),
        CheckerFinding::OutsideBolt { placed: 3 },
    ),
    (
        "on a bolt that is not counted",
        |layout| layout.placed[11].bolt = 2,
        CheckerFinding::UnknownBolt { placed: 11 },
    ),
    (
        "a bolt that is not used",
        |layout| layout.bolts.push(BoltLengths::default()),
        CheckerFinding::WrongBolt { bolt: 2 },
    ),
    (
        "over each other by a nanometre",
        |layout| layout.placed[10].along = mm(300) - Length::from_nanometres(1),
        CheckerFinding::Overlap {
            first: 7,
            second: 10,
        },
    ),
    (
        "in the same place",
        |layout| layout.placed[8].across = mm(310),
        CheckerFinding::Overlap {
            first: 7,
            second: 8,
        },
    ),
    (
        "too close along by a nanometre",
        |layout| layout.placed[10].along = mm(310) - Length::from_nanometres(1),
        CheckerFinding::TooClose {
            first: 7,
            second: 10,
        },
    ),
    (
        "too close across by a nanometre",
        |layout| layout.placed[9].across = mm(730) - Length::from_nanometres(1),
        CheckerFinding::TooClose {
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
        CheckerFinding::TooClose {
            first: 9,
            second: 10,
        },
    ),
    (
        "off the repeat along",
        |layout| layout.placed[6].along = mm(121),
        CheckerFinding::OffRepeat {
            placed: 6,
            direction: BoltDirection::Along,
        },
    ),
    (
        "off the repeat across",
        |layout| layout.placed[0].across = mm(129),
        CheckerFinding::OffRepeat {
            placed: 0,
            direction: BoltDirection::Across,
        },
    ),
    (
        "turned on one-way cloth",
        |layout| layout.placed[7].orientation = Orientation::Turned,
        CheckerFinding::TurnedOneWay { placed: 7 },
    ),
    (
        "a bolt's length understated",
        |layout| layout.bolts[0].exact = mm(2000),
        CheckerFinding::WrongBolt { bolt: 0 },
    ),
    (
        "too little bought of a bolt",
        |layout| layout.bolts[1].bought = mm(700),
        CheckerFinding::WrongBolt { bolt: 1 },
    ),
    (
        "a step too much bought of a bolt",
        |layout| layout.bolts[1].bought = mm(900),
        CheckerFinding::WrongBolt { bolt: 1 },
    ),
    (
        "not a whole step bought of a bolt",
        |layout| layout.bolts[1].bought = mm(790),
        CheckerFinding::WrongBolt { bolt: 1 },
    ),
    (
        "a wrong total used",
        |layout| layout.exact = mm(2819),
        CheckerFinding::WrongTotal,
    ),
    (
        "a wrong total bought",
        |layout| layout.bought = mm(2700),
        CheckerFinding::WrongTotal,
    ),
    (
        "longer than the rule of thumb",
        |layout| layout.rule_of_thumb = mm(2819),
        CheckerFinding::LongerThanRule,
    ),
    (
        "shorter than the bound",
        |layout| layout.lower_bound = mm(2821),
        CheckerFinding::ShorterThanBound,
    ),
];

#[test]
fn every_breakage_gives_its_finding() {
    let (cloth, pieces) = scene();
    for (name, breaks, finding) in BREAKAGES {
        let mut layout = sound();
        breaks(&mut layout);
        let findings = check(&cloth, &pieces, &layout);
        assert!(findings.contains(finding), "{name}: {findings:?}");
        assert!(!finding.to_string().is_empty());
    }
}

#[test]
fn a_turned_piece_carries_its_point_to_the_other_end() {
    let cloth = LayoutCloth {
        repeat_along: Some(mm(320)),
        ..plain_cloth(mm(500))
    };
    let piece = LayoutPiece {
        phase_along: Some(mm(60)),
        ..plain_piece(mm(500), mm(700), 1)
    };
    let pieces = [piece];
    let mut layout = lay_with(&cloth, &pieces, LITTLE).unwrap();
    layout.placed[0].orientation = Orientation::Turned;
    let off = CheckerFinding::OffRepeat {
        placed: 0,
        direction: BoltDirection::Along,
    };
    assert!(check(&cloth, &pieces, &layout).contains(&off));
    // Turned, the point lies 640 mm from the edge that comes first: two repeats.
    layout.placed[0].along = Length::ZERO;
    assert!(!check(&cloth, &pieces, &layout).contains(&off));
}

#[test]
fn a_half_drop_is_checked_by_column_and_by_copy() {
    let by_copy = LayoutCloth {
        repeat_along: Some(mm(100)),
        half_drop: true,
        ..plain_cloth(mm(500))
    };
    let by_column = LayoutCloth {
        repeat_across: Some(mm(250)),
        ..by_copy.clone()
    };
    let copies = [LayoutPiece {
        phase_along: Some(mm(0)),
        ..plain_piece(mm(200), mm(100), 2)
    }];
    let columns = [LayoutPiece {
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
        let off = CheckerFinding::OffRepeat {
            placed: second,
            direction: BoltDirection::Along,
        };
        assert!(check(&cloth, &pieces, &layout).contains(&off));
    }
}
