//! Shaped pieces: how they lie within one another's width and length, and what the checker says.

#![expect(
    clippy::unwrap_used,
    reason = "a test stops at the first broken promise"
)]

mod common;

use common::{mm, plain_cloth, plain_piece, shaped_piece};
use pelmet_bolt::{CheckerFinding, Layout, LayoutCloth, LayoutPiece, check, lay};
use pelmet_measure::Length;

/// A jabot, long at one side: two of them, one turned end for end, make a rectangle 1000 mm long.
const JABOT: [(i64, i64); 4] = [(0, 0), (600, 0), (600, 200), (0, 800)];

/// The same for the other side of the window.
const OTHER_JABOT: [(i64, i64); 4] = [(0, 0), (600, 0), (600, 800), (0, 200)];

fn laid(cloth: &LayoutCloth, pieces: &[LayoutPiece]) -> Layout {
    let layout = lay(cloth, pieces).unwrap();
    assert_eq!(check(cloth, pieces, &layout), []);
    layout
}

#[test]
fn jabots_lie_head_to_tail_where_the_cloth_has_no_top() {
    let cloth = plain_cloth(mm(600));
    let layout = laid(&cloth, &[shaped_piece(&JABOT, 6)]);
    assert_eq!(layout.exact, mm(3000));
    assert_eq!(
        layout
            .placed
            .iter()
            .filter(|it| it.orientation.is_turned())
            .count(),
        3
    );
    assert!(layout.cannot_be_beaten(&cloth), "the pieces fill the cloth");
}

#[test]
fn nothing_is_turned_on_one_way_cloth() {
    let cloth = LayoutCloth {
        one_way: true,
        ..plain_cloth(mm(600))
    };
    let layout = laid(&cloth, &[shaped_piece(&JABOT, 6)]);
    assert_eq!(layout.exact, mm(4800));
    assert!(layout.placed.iter().all(|it| !it.orientation.is_turned()));
}

#[test]
fn nothing_that_the_print_holds_is_turned() {
    let cloth = LayoutCloth {
        repeat_along: Some(mm(100)),
        ..plain_cloth(mm(600))
    };
    let held = LayoutPiece {
        phase_along: Some(mm(0)),
        ..shaped_piece(&JABOT, 6)
    };
    assert_eq!(laid(&cloth, &[held]).exact, mm(4800));
}

#[test]
fn the_gap_is_kept_between_slanting_edges() {
    let cloth = LayoutCloth {
        gap: mm(10),
        ..plain_cloth(mm(600))
    };
    // Edges at 45 degrees that are to be 10 mm apart across or along lie 20 mm apart along.
    let layout = laid(&cloth, &[shaped_piece(&JABOT, 2)]);
    assert_eq!(layout.exact, mm(1020));
}

#[test]
fn the_two_sides_of_a_window_share_the_cloth() {
    let jabots = [shaped_piece(&JABOT, 2), shaped_piece(&OTHER_JABOT, 2)];
    assert_eq!(laid(&plain_cloth(mm(1200)), &jabots).exact, mm(1000));
}

#[test]
fn a_swag_leaves_room_for_what_lies_between_its_points() {
    let arch = [
        (0, 0),
        (1000, 0),
        (1000, 700),
        (900, 700),
        (900, 200),
        (100, 200),
        (100, 700),
        (0, 700),
    ];
    let pieces = [shaped_piece(&arch, 1), plain_piece(mm(800), mm(500), 1)];
    let layout = laid(&plain_cloth(mm(1000)), &pieces);
    assert_eq!(layout.exact, mm(700));
}

#[test]
fn a_strip_cut_apart_by_slanting_lines_is_put_together_again() {
    let parts = [
        vec![(0, 0), (500, 0), (300, 400), (0, 400)],
        vec![(200, 0), (700, 0), (700, 400), (0, 400)],
        vec![(0, 0), (200, 0), (200, 400)],
    ];
    let pieces: Vec<LayoutPiece> = parts
        .iter()
        .map(|corners| shaped_piece(corners, 1))
        .collect();
    let cloth = LayoutCloth {
        one_way: true,
        buying_step: mm(1),
        ..plain_cloth(mm(1200))
    };
    assert_eq!(laid(&cloth, &pieces).exact, mm(400));
}

#[test]
fn shapes_that_only_touch_are_sound_and_those_a_nanometre_nearer_are_not() {
    let cloth = plain_cloth(mm(600));
    let pieces = [shaped_piece(&JABOT, 2)];
    let mut nearer = laid(&cloth, &pieces);
    nearer.placed.last_mut().unwrap().along -= Length::from_nanometres(1);
    let overlap = CheckerFinding::Overlap {
        first: 0,
        second: 1,
    };
    assert!(check(&cloth, &pieces, &nearer).contains(&overlap));
}

#[test]
fn an_outline_on_its_side_four_times_is_as_it_was() {
    let outline = shaped_piece(&JABOT, 1).outline.unwrap();
    let on_its_side = outline.on_its_side(mm(600));
    // Its long left side is now its lower one.
    assert_eq!(on_its_side.corners()[3], common::corner(800, 600));
    let again = on_its_side.on_its_side(mm(800)).on_its_side(mm(600));
    assert_eq!(again.on_its_side(mm(800)), outline);
}
