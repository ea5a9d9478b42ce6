//! Flaws to cut around: layouts whose lengths are known by hand.

#![expect(
    clippy::unwrap_used,
    reason = "a test stops at the first broken promise"
)]

mod common;

use common::{mm, plain_cloth, plain_piece};
use pelmet_bolt::{BoltFlaw, BoltLengths, Layout, LayoutCloth, LayoutPiece, check, lay};
use pelmet_measure::Length;

/// A flaw across a cloth one metre wide.
fn flaw(bolt: u32, from: i64, to: i64) -> BoltFlaw {
    BoltFlaw {
        bolt,
        from: mm(from),
        to: mm(to),
        left: Length::ZERO,
        right: mm(1000),
    }
}

fn laid(cloth: &LayoutCloth, flaws: Vec<BoltFlaw>, piece: LayoutPiece) -> Layout {
    let cloth = LayoutCloth {
        flaws,
        ..cloth.clone()
    };
    let pieces = [piece];
    let layout = lay(&cloth, &pieces).unwrap();
    assert_eq!(check(&cloth, &pieces, &layout), []);
    layout
}

/// (flaws, length of each of three pieces as wide as the cloth, the length they take).
type Case = (Vec<BoltFlaw>, i64, i64);

#[test]
fn pieces_lie_before_and_after_a_flaw() {
    let cases: [Case; 5] = [
        (vec![flaw(0, 0, 80)], 400, 1280),
        // The flaw lies just where one piece ends and the next begins.
        (vec![flaw(0, 400, 480)], 400, 1280),
        // It lies in the second piece, which goes behind it.
        (vec![flaw(0, 500, 580)], 400, 1380),
        (vec![flaw(0, 500, 580), flaw(0, 900, 950)], 400, 1750),
        // Beyond the last piece it takes nothing.
        (vec![flaw(0, 1200, 1300)], 400, 1200),
    ];
    for (flaws, length, taken) in cases {
        let piece = plain_piece(mm(1000), mm(length), 3);
        let layout = laid(&plain_cloth(mm(1000)), flaws.clone(), piece);
        assert_eq!(layout.exact, mm(taken), "{flaws:?}");
    }
}

#[test]
fn no_layout_needs_less_where_a_flaw_lies_between_pieces() {
    let piece = plain_piece(mm(1000), mm(400), 3);
    let layout = laid(&plain_cloth(mm(1000)), vec![flaw(0, 400, 480)], piece);
    assert_eq!(layout.lower_bound, mm(1280));
}

#[test]
fn a_piece_lies_beside_a_flaw_that_leaves_it_room() {
    let left_half = BoltFlaw {
        right: mm(500),
        ..flaw(0, 0, 200)
    };
    let piece = plain_piece(mm(500), mm(500), 4);
    let layout = laid(&plain_cloth(mm(1000)), vec![left_half], piece);
    assert_eq!(layout.exact, mm(1200));
}

#[test]
fn the_print_goes_on_behind_a_flaw() {
    let cloth = LayoutCloth {
        repeat_along: Some(mm(300)),
        ..plain_cloth(mm(1000))
    };
    let piece = LayoutPiece {
        phase_along: Some(mm(100)),
        ..plain_piece(mm(1000), mm(250), 2)
    };
    // The first place is at 200, the next that the print allows behind the flaw at 800.
    let layout = laid(&cloth, vec![flaw(0, 450, 520)], piece);
    assert_eq!(layout.exact, mm(1050));
}

#[test]
fn a_bolt_whose_flaws_leave_no_room_is_passed_over() {
    let cloth = LayoutCloth {
        bolt_length: Some(mm(1000)),
        ..plain_cloth(mm(1000))
    };
    let layout = laid(
        &cloth,
        vec![flaw(0, 400, 500)],
        plain_piece(mm(1000), mm(700), 1),
    );
    let used = BoltLengths {
        exact: mm(700),
        bought: mm(700),
    };
    assert_eq!(layout.bolts, [BoltLengths::default(), used]);
}
