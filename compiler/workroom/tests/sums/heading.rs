//! What a heading adds to the length, and whether it suits its rod or board.

use pelmet_measure::Length;
use pelmet_model::PanelMeasure;
use pelmet_model::SupportKind;
use pelmet_model::{
    Board, FastenerOrder, Heading, Matter, PanelMade, PanelOrder, PieceMatter, SupportOrder,
};

use crate::sample::{cloth, eighths, inches, made, panel, rod, window};

fn fastener(width: Length) -> FastenerOrder {
    FastenerOrder {
        name: String::from("hook-and-loop"),
        width,
        inset: Length::ZERO,
    }
}

fn over_rod(tail: Length) -> Heading {
    Heading::OverRod {
        tail,
        fastener: None,
    }
}

fn pocket(depth: Option<Length>) -> Heading {
    Heading::RodPocket {
        pocket: depth,
        ease: eighths(2),
        above: inches(1),
        turn: eighths(4),
    }
}

fn board() -> SupportOrder {
    let (name, length, depth) = (String::from("shelf"), inches(40), inches(4));
    SupportOrder::Board(Board {
        name,
        length,
        depth,
        thickness: None,
    })
}

fn thick_rod(diameter: Length) -> SupportOrder {
    SupportOrder::Rod(pelmet_model::Rod {
        diameter,
        ..rod(inches(40))
    })
}

fn hung(order: PanelOrder, support: SupportOrder) -> (Option<PanelMade>, Vec<Matter>) {
    let mut window = window(inches(40), vec![order], &[0]);
    window.support = support;
    let (mut made, matters) = made(&window, &[cloth()]);
    (made.panels.remove(0), matters)
}

fn headed(heading: Heading, support: SupportOrder) -> (Option<PanelMade>, Vec<Matter>) {
    hung(PanelOrder { heading, ..panel() }, support)
}

#[test]
fn each_heading_adds_its_length() {
    for (heading, support, depth_in_nanometres) in [
        (Heading::Plain, thick_rod(inches(1)), 0),
        // The length over the rod of 1 in: 25.4 mm x (pi/2 - 1/2), and the tail.
        (
            over_rod(inches(5)),
            thick_rod(inches(1)),
            127_000_000 + 27_198_227,
        ),
        (
            over_rod(Length::ZERO),
            thick_rod(Length::millimetres(100)),
            107_079_633,
        ),
        // Half round the rod and 1/4 in of ease; 1 in of frill and 1/2 in turned under.
        (pocket(None), thick_rod(inches(1)), 39_898_227 + 44_450_000),
        (pocket(Some(inches(2))), thick_rod(inches(1)), 88_900_000),
        (
            Heading::OnBoard {
                lap: None,
                fastener: None,
            },
            board(),
            101_600_000,
        ),
        (
            Heading::OnBoard {
                lap: Some(inches(3)),
                fastener: None,
            },
            board(),
            76_200_000,
        ),
    ] {
        let (made, matters) = headed(heading.clone(), support);
        let made = made.unwrap();
        assert_eq!(matters, [], "{heading:?}");
        assert_eq!(
            made.heading_depth,
            Length::from_nanometres(depth_in_nanometres),
            "{heading:?}"
        );
        assert_eq!(made.made_length, made.heading_depth + inches(14));
    }
}

/// Common practice, no source: for folding over a thin rod with a tail of about 5 in, 5 to 6 in are
/// added above the shape.
#[test]
fn a_thin_rod_adds_five_to_six_inches() {
    for diameter in [eighths(2), eighths(4), eighths(6)] {
        let (made, _) = headed(over_rod(inches(5)), thick_rod(diameter));
        let added = made.unwrap().heading_depth;
        assert!(
            added >= inches(5) && added <= inches(6),
            "{diameter:?}: {added:?}"
        );
    }
}

/// The cloth from the rod's top down to the lower edge is the drop less half the rod, and a quarter
/// of the way round it.
#[test]
fn the_heading_line_rests_on_top_of_the_rod() {
    let (made, _) = headed(over_rod(inches(5)), thick_rod(Length::millimetres(100)));
    let made = made.unwrap();
    let line = made.marks[0].down.unwrap();
    let quarter_round = Length::from_nanometres(78_539_816);
    assert_eq!(line, inches(5) + quarter_round);
    let below = inches(14) - Length::millimetres(50) + quarter_round;
    assert!((made.made_length - line - below).abs() <= Length::from_nanometres(1));
}

/// What does not suit in each heading is told, and whether there is a panel all the same.
#[track_caller]
fn assert_does_not_suit<const N: usize>(cases: [(Heading, SupportOrder, PieceMatter, bool); N]) {
    for (heading, support, matter, made) in cases {
        let (panel, matters) = headed(heading.clone(), support);
        assert_eq!(matters, [Matter::Piece(matter)], "{heading:?}");
        assert_eq!(panel.is_some(), made, "{heading:?}");
    }
}

#[test]
fn a_heading_on_the_wrong_support_or_too_short_a_drop_is_reported() {
    assert_does_not_suit([
        (
            over_rod(inches(5)),
            board(),
            PieceMatter::HeadingNeedsOther {
                needs: SupportKind::Rod,
            },
            false,
        ),
        (
            pocket(None),
            board(),
            PieceMatter::HeadingNeedsOther {
                needs: SupportKind::Rod,
            },
            false,
        ),
        (
            Heading::OnBoard {
                lap: None,
                fastener: None,
            },
            thick_rod(inches(1)),
            PieceMatter::HeadingNeedsOther {
                needs: SupportKind::Board,
            },
            false,
        ),
        (
            over_rod(inches(5)),
            thick_rod(inches(30)),
            PieceMatter::DropTooShort {
                drop: inches(14),
                least: inches(15),
            },
            false,
        ),
        (
            pocket(Some(inches(14))),
            thick_rod(inches(1)),
            PieceMatter::DropTooShort {
                drop: inches(14),
                least: inches(15),
            },
            true,
        ),
    ]);
}

#[test]
fn a_pocket_a_tail_or_a_fastener_that_does_not_suit_is_reported() {
    let half_round = Length::from_nanometres(39_898_227);
    let wide = || Some(fastener(inches(2)));
    let carried = |tail| PieceMatter::FastenerWiderThanTail {
        fastener: fastener(inches(2)),
        tail,
    };
    assert_does_not_suit([
        (
            pocket(Some(eighths(12))),
            thick_rod(inches(1)),
            PieceMatter::PocketTooSmall {
                pocket: eighths(12),
                least: half_round,
            },
            true,
        ),
        (
            over_rod(inches(14)),
            thick_rod(inches(1)),
            PieceMatter::TailShows {
                tail: inches(14),
                drop: inches(14),
            },
            true,
        ),
        (
            Heading::OverRod {
                tail: inches(1),
                fastener: wide(),
            },
            thick_rod(inches(1)),
            carried(inches(1)),
            true,
        ),
        (
            Heading::OnBoard {
                lap: Some(inches(1)),
                fastener: wide(),
            },
            board(),
            carried(inches(1)),
            true,
        ),
    ]);
}

#[test]
fn a_panel_without_a_drop_has_no_outline_either() {
    let (made, matters) = hung(
        PanelOrder {
            drop: Length::ZERO,
            ..panel()
        },
        board(),
    );
    assert_eq!(made, None);
    let nothing = PieceMatter::NothingLeft {
        size: PanelMeasure::Drop,
        length: Length::ZERO,
    };
    assert_eq!(matters, [Matter::Piece(nothing)]);
}

/// Stephenson 1905: a pole of 1 in is about 3 1/8 in round and goes through a casing stitched
/// 1 7/8 in apart. A Manual of Home-Making 1919: a casing of at least twice the rod's diameter.
#[test]
fn casings_that_work_in_practice_are_large_enough() {
    let wide_enough = |casing, diameter| {
        let (_, matters) = headed(pocket(Some(casing)), thick_rod(diameter));
        matters.is_empty()
    };
    assert!(wide_enough(eighths(15), inches(1)));
    for diameter in [eighths(3), eighths(4), inches(1), eighths(11), inches(2)] {
        assert!(wide_enough(diameter * 2, diameter), "{diameter:?}");
        assert!(
            !wide_enough(diameter * 3 - diameter.divided(2) * 3, diameter),
            "{diameter:?}"
        );
    }
}

#[test]
fn a_heading_may_just_fit() {
    let half_round = Length::from_nanometres(39_898_227);
    let just_fits = [
        (
            "a pocket half round the rod",
            pocket(Some(half_round)),
            thick_rod(inches(1)),
        ),
        (
            "a pocket and its frill as deep as the drop",
            pocket(Some(inches(13))),
            thick_rod(inches(1)),
        ),
        (
            "a fastener as wide as its tail",
            Heading::OverRod {
                tail: inches(2),
                fastener: Some(fastener(inches(2))),
            },
            thick_rod(inches(1)),
        ),
    ];
    for (name, heading, support) in just_fits {
        assert_eq!(headed(heading, support).1, [], "{name}");
    }
}

#[test]
fn a_heading_over_a_rod_or_on_a_board_may_carry_a_fastener() {
    let held = || Some(fastener(inches(1)));
    let over_rod = Heading::OverRod {
        tail: inches(4),
        fastener: held(),
    };
    let on_board = Heading::OnBoard {
        lap: None,
        fastener: held(),
    };
    for (heading, carries) in [(over_rod, true), (on_board, true), (pocket(None), false)] {
        assert_eq!(heading.fastener().is_some(), carries, "{heading:?}");
    }
}
