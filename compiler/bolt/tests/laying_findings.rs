//! What cannot be laid is refused, with the piece that cannot.

mod common;

use common::{mm, plain_cloth, plain_piece};
use pelmet_bolt::{BoltFlaw, LayingFinding, LayoutCloth, LayoutPiece, MAXIMUM_PIECES, lay};
use pelmet_measure::Length;

/// (what is wrong, cloth, the second piece, what is found).
type Case = (&'static str, LayoutCloth, LayoutPiece, LayingFinding);

fn piece(width: i64, length: i64) -> LayoutPiece {
    plain_piece(mm(width), mm(length), 1)
}

fn printed_cloth() -> LayoutCloth {
    LayoutCloth {
        repeat_along: Some(mm(400)),
        repeat_across: Some(mm(300)),
        bolt_length: Some(mm(2000)),
        ..plain_cloth(mm(1000))
    }
}

fn pieces_too_large() -> Vec<Case> {
    let (plain, printed) = (plain_cloth(mm(1000)), printed_cloth());
    let (usable, bolt) = (mm(1000), mm(2000));
    vec![
        (
            "wider than the cloth",
            plain,
            piece(1001, 10),
            LayingFinding::TooWide {
                piece: 1,
                width: mm(1001),
                usable,
            },
        ),
        (
            "longer than the bolt",
            printed.clone(),
            piece(10, 2001),
            LayingFinding::TooLong {
                piece: 1,
                length: mm(2001),
                bolt,
            },
        ),
        (
            "a motif off the side",
            printed.clone(),
            LayoutPiece {
                phase_across: Some(mm(450)),
                ..piece(900, 10)
            },
            LayingFinding::HeldBeyondWidth {
                piece: 1,
                across: mm(150),
                width: mm(900),
                usable,
            },
        ),
        (
            "a motif off the end",
            printed,
            LayoutPiece {
                phase_along: Some(mm(100)),
                ..piece(900, 1800)
            },
            LayingFinding::HeldBeyondBolt {
                piece: 1,
                along: mm(300),
                length: mm(1800),
                bolt,
            },
        ),
    ]
}

fn pieces_not_to_be_laid() -> Vec<Case> {
    let (plain, printed) = (plain_cloth(mm(1000)), printed_cloth());
    let beyond = Length::LARGEST + Length::from_nanometres(1);
    let out_of_range = LayingFinding::PieceOutOfRange { piece: 1 };
    let held_across = LayoutPiece {
        phase_across: Some(mm(5)),
        ..piece(10, 10)
    };
    let held_along = LayoutPiece {
        phase_along: Some(mm(5)),
        ..piece(10, 10)
    };
    let held_afar = LayoutPiece {
        phase_along: Some(-beyond),
        ..piece(10, 10)
    };
    let long = LayoutPiece {
        length: beyond,
        ..piece(10, 10)
    };
    let needs_repeat = LayingFinding::PhaseNeedsRepeat { piece: 1 };
    vec![
        (
            "held across by no repeat",
            plain.clone(),
            held_across,
            needs_repeat.clone(),
        ),
        (
            "held along by no repeat",
            plain.clone(),
            held_along,
            needs_repeat,
        ),
        (
            "no width",
            plain.clone(),
            piece(0, 10),
            out_of_range.clone(),
        ),
        (
            "a length below zero",
            plain.clone(),
            piece(10, -1),
            out_of_range.clone(),
        ),
        ("longer than any length", plain, long, out_of_range.clone()),
        (
            "a point further than any length",
            printed,
            held_afar,
            out_of_range,
        ),
    ]
}

fn too_many_pieces() -> Vec<Case> {
    vec![(
        "too many pieces",
        plain_cloth(mm(1000)),
        plain_piece(mm(10), mm(10), MAXIMUM_PIECES),
        LayingFinding::TooMany {
            count: 100_001,
            limit: MAXIMUM_PIECES,
        },
    )]
}

fn cloths_not_to_be_cut() -> Vec<Case> {
    let plain = plain_cloth(mm(1000));
    let beyond = Length::LARGEST + Length::from_nanometres(1);
    let zero = Length::ZERO;
    let sound = piece(10, 10);
    let cloths = [
        (
            "a gap below zero",
            LayoutCloth {
                gap: mm(-1),
                ..plain.clone()
            },
        ),
        (
            "a gap longer than any length",
            LayoutCloth {
                gap: beyond,
                ..plain.clone()
            },
        ),
        (
            "a repeat without length",
            LayoutCloth {
                repeat_along: Some(zero),
                ..plain.clone()
            },
        ),
        (
            "a repeat below zero",
            LayoutCloth {
                repeat_across: Some(mm(-1)),
                ..plain.clone()
            },
        ),
        (
            "a bolt without length",
            LayoutCloth {
                bolt_length: Some(zero),
                ..plain.clone()
            },
        ),
        (
            "a step without length",
            LayoutCloth {
                buying_step: zero,
                ..plain
            },
        ),
    ];
    let out_of_range =
        cloths.map(|(name, cloth)| (name, cloth, sound.clone(), LayingFinding::ClothOutOfRange));
    let no_width = (
        "no usable width",
        plain_cloth(zero),
        sound,
        LayingFinding::NoUsableWidth,
    );
    out_of_range.into_iter().chain([no_width]).collect()
}

/// Makes a flaw unsound, with a length that none may have.
type BreaksFlaw = fn(&mut BoltFlaw, Length);

fn flaws_out_of_range() -> Vec<Case> {
    let sound = BoltFlaw {
        bolt: 3,
        from: mm(100),
        to: mm(110),
        left: Length::ZERO,
        right: mm(1000),
    };
    let beyond = Length::LARGEST + Length::from_nanometres(1);
    let breakages: [(&str, BreaksFlaw); 6] = [
        ("without length", |flaw, _| flaw.to = flaw.from),
        ("without width", |flaw, _| flaw.left = flaw.right),
        ("before its bolt", |flaw, _| flaw.from = mm(-1)),
        ("beyond any length", |flaw, beyond| flaw.to = beyond),
        ("left of the cloth", |flaw, _| flaw.left = mm(-1)),
        ("right of the cloth", |flaw, _| flaw.right = mm(1001)),
    ];
    let case = |(name, breaks): (&'static str, BreaksFlaw)| {
        let mut broken = sound;
        breaks(&mut broken, beyond);
        let cloth = LayoutCloth {
            flaws: vec![sound, broken],
            ..plain_cloth(mm(1000))
        };
        let finding = LayingFinding::FlawOutOfRange { flaw: 1 };
        (name, cloth, piece(10, 10), finding)
    };
    breakages.map(case).into_iter().collect()
}

fn all_cases() -> impl Iterator<Item = Case> {
    [
        pieces_too_large(),
        pieces_not_to_be_laid(),
        too_many_pieces(),
        cloths_not_to_be_cut(),
        flaws_out_of_range(),
    ]
    .into_iter()
    .flatten()
}

#[test]
fn every_finding_names_its_piece() {
    for (name, cloth, piece, finding) in all_cases() {
        let pieces = [plain_piece(mm(10), mm(10), 1), piece];
        assert!(!finding.to_string().is_empty());
        assert_eq!(lay(&cloth, &pieces), Err(finding), "{name}");
    }
}

#[test]
fn the_odd_widths_of_a_half_drop_must_fit_the_bolt_too() {
    let cloth = LayoutCloth {
        repeat_along: Some(mm(400)),
        half_drop: true,
        bolt_length: Some(mm(1900)),
        ..plain_cloth(mm(1000))
    };
    let piece = LayoutPiece {
        phase_along: Some(mm(0)),
        ..plain_piece(mm(900), mm(1800), 1)
    };
    assert!(lay(&cloth, std::slice::from_ref(&piece)).is_ok());
    let (along, length, bolt) = (mm(200), mm(1800), mm(1900));
    assert_eq!(
        lay(
            &cloth,
            &[LayoutPiece {
                quantity: 2,
                ..piece
            }]
        ),
        Err(LayingFinding::HeldBeyondBolt {
            piece: 0,
            along,
            length,
            bolt
        })
    );
}

#[test]
fn as_many_pieces_as_may_be_are_laid() {
    let cloth = LayoutCloth {
        repeat_along: Some(mm(320)),
        ..plain_cloth(mm(1370))
    };
    let held = LayoutPiece {
        phase_along: Some(mm(50)),
        ..plain_piece(mm(210), mm(300), 50_000)
    };
    let pieces = [held, plain_piece(mm(130), mm(170), 50_000)];
    let laid = lay(&cloth, &pieces).map(|layout| layout.placed.len());
    assert_eq!(laid, Ok(100_000));
}
