//! Layouts whose lengths are known, from published figures or by hand.

#![expect(
    clippy::unwrap_used,
    reason = "a test stops at the first broken promise"
)]

mod common;

use common::{mm, plain_cloth, plain_piece};
use pelmet_bolt::{Layout, LayoutCloth, LayoutPiece, check, lay};
use pelmet_measure::Length;

fn laid(cloth: &LayoutCloth, pieces: &[LayoutPiece]) -> Layout {
    let layout = lay(cloth, pieces).unwrap();
    assert_eq!(check(cloth, pieces, &layout), []);
    layout
}

fn held_along(piece: LayoutPiece, phase: Length) -> LayoutPiece {
    LayoutPiece {
        phase_along: Some(phase),
        ..piece
    }
}

#[test]
fn strips_of_the_full_width_lie_one_after_another() {
    // National Instructional Media Institute, "Dress Making, Trade Practical", pp. 197 and 188:
    // (cloth cm, strips, strip depth cm, cloth needed cm).
    for (width, strips, depth, needed) in [(110, 5, 15, 75), (90, 3, 15, 45)] {
        let width = mm(width * 10);
        let layout = laid(
            &plain_cloth(width),
            &[plain_piece(width, mm(depth * 10), strips)],
        );
        assert_eq!(layout.exact, mm(needed * 10));
        assert_eq!(layout.rule_of_thumb, layout.exact);
        assert_eq!(layout.lower_bound, layout.exact);
    }
}

#[test]
fn a_matched_cut_takes_whole_repeats() {
    // C. Merrick and R. Day, "The Encyclopaedia of Curtains", pp. 116-117, by its rule: a cut drop
    // of 250 cm with a repeat of 64 cm takes 256 cm.
    let cloth = LayoutCloth {
        repeat_along: Some(mm(640)),
        ..plain_cloth(mm(1370))
    };
    for cuts in [1, 2, 5] {
        let piece = held_along(plain_piece(mm(1370), mm(2500), cuts), Length::ZERO);
        let layout = laid(&cloth, &[piece]);
        assert_eq!(layout.rule_of_thumb, mm(2560) * i64::from(cuts));
        assert_eq!(layout.exact, layout.rule_of_thumb - mm(60));
        assert_eq!(layout.lower_bound, layout.exact);
    }
}

#[test]
fn a_half_drop_cut_takes_half_a_repeat_more() {
    // The same, p. 119, by its rule: 288 cm with a half-drop match.
    let cloth = LayoutCloth {
        repeat_along: Some(mm(640)),
        half_drop: true,
        ..plain_cloth(mm(1370))
    };
    // Of five cuts three hang on the line and two half a repeat beyond it: laid by turns, each
    // takes half a repeat more, but the three one after another and then the two take it once.
    for (cuts, saved) in [(1, 380), (2, 380), (5, 380 + 960)] {
        let piece = held_along(plain_piece(mm(1370), mm(2500), cuts), Length::ZERO);
        let layout = laid(&cloth, &[piece]);
        assert_eq!(layout.rule_of_thumb, mm(2880) * i64::from(cuts));
        assert_eq!(layout.exact, layout.rule_of_thumb - mm(saved));
    }
}

#[test]
fn half_drop_widths_waste_nothing_where_half_repeats_fit() {
    // 4 1/2 repeats of 640 mm are 2880 mm: the next width starts there of itself, where the rule
    // of thumb would round to 5 repeats and add a half.
    let cloth = LayoutCloth {
        repeat_along: Some(mm(640)),
        half_drop: true,
        ..plain_cloth(mm(1370))
    };
    let piece = held_along(plain_piece(mm(1370), mm(2880), 4), Length::ZERO);
    let layout = laid(&cloth, &[piece]);
    assert_eq!(layout.exact, mm(2880 * 4));
    assert_eq!(layout.rule_of_thumb, mm((640 * 5 + 320) * 4));
}

/// (what is shown, pieces, [exact, bought, rule of thumb, bound] in millimetres, bolts).
type Case = (&'static str, Vec<LayoutPiece>, [i64; 4], usize);

fn assert_all(cloth: &LayoutCloth, cases: &[Case]) {
    for (name, pieces, lengths, bolts) in cases {
        let layout = laid(cloth, pieces);
        let found = [
            layout.exact,
            layout.bought,
            layout.rule_of_thumb,
            layout.lower_bound,
        ];
        assert_eq!(found, lengths.map(mm), "{name}");
        assert_eq!(layout.bolts.len(), *bolts, "{name}");
    }
}

fn piece(width: i64, length: i64, quantity: u32) -> LayoutPiece {
    plain_piece(mm(width), mm(length), quantity)
}

#[test]
fn plain_cloth_is_filled_side_by_side_and_beneath() {
    let cases = [
        ("nothing takes nothing", vec![], [0, 0, 0, 0], 0),
        (
            "a quantity of none",
            vec![piece(10, 10, 0)],
            [0, 0, 0, 0],
            0,
        ),
        (
            "two side by side",
            vec![piece(500, 240, 4)],
            [480, 500, 480, 480],
            1,
        ),
        (
            "short pieces beside a long one, one beneath the other",
            vec![piece(600, 800, 1), piece(400, 400, 2)],
            [800, 800, 800 + 400, 800],
            1,
        ),
        (
            "the bound counts widths over a half as whole ones",
            vec![piece(501, 300, 2), piece(100, 100, 1)],
            [600, 600, 700, 600],
            1,
        ),
        (
            "the bound counts widths over a third as halves",
            vec![piece(334, 300, 4)],
            [600, 600, 600, 600],
            1,
        ),
    ];
    assert_all(&plain_cloth(mm(1000)), &cases);
}

#[test]
fn the_gap_parts_neighbours_but_not_edges() {
    let cases = [
        (
            "too wide for two",
            vec![piece(500, 240, 4)],
            [990, 1000, 990, 990],
            1,
        ),
        (
            "just two abreast",
            vec![piece(495, 240, 4)],
            [490, 500, 490, 490],
            1,
        ),
    ];
    assert_all(
        &LayoutCloth {
            gap: mm(10),
            ..plain_cloth(mm(1000))
        },
        &cases,
    );
}

#[test]
fn the_print_moves_pieces_along_and_across() {
    let held = |piece, phase| held_along(piece, mm(phase));
    let cases = [
        (
            "another phase lies lower on the same shelf",
            vec![held(piece(400, 600, 1), 0), held(piece(400, 300, 1), 400)],
            [600, 600, 640 + 240 + 640, 600],
            1,
        ),
        (
            "a shelf as long as the repeat allows",
            vec![held(piece(400, 500, 1), 0), held(piece(400, 500, 1), 600)],
            [540, 600, 640 + 40 + 640, 540],
            1,
        ),
        (
            "a left edge may lie at 200 or 500: one abreast",
            vec![LayoutPiece {
                phase_across: Some(mm(100)),
                ..piece(400, 100, 3)
            }],
            [300, 300, 300, 200],
            1,
        ),
    ];
    let cloth = LayoutCloth {
        repeat_along: Some(mm(640)),
        repeat_across: Some(mm(300)),
        ..plain_cloth(mm(1000))
    };
    assert_all(&cloth, &cases);
}

#[test]
fn no_piece_crosses_the_end_of_a_bolt() {
    let cases = [
        (
            "two to a bolt",
            vec![piece(1000, 400, 5)],
            [2000, 2000, 2000, 2000],
            3,
        ),
        (
            "a whole bolt is never more than the bolt",
            vec![piece(1000, 1050, 1)],
            [1050, 1050, 1050, 1050],
            1,
        ),
        (
            "what a bolt leaves is not wasted",
            vec![piece(1000, 700, 2), piece(1000, 350, 2)],
            [2100, 2100, 2100, 2100],
            2,
        ),
    ];
    assert_all(
        &LayoutCloth {
            bolt_length: Some(mm(1050)),
            ..plain_cloth(mm(1000))
        },
        &cases,
    );
}

#[test]
fn the_rule_of_thumb_takes_no_more_of_a_bolt_than_there_is() {
    let cases = [(
        "two repeats are 1280, the bolt is 1050",
        vec![held_along(piece(1000, 700, 3), Length::ZERO)],
        [2100, 2100, 3150, 2100],
        3,
    )];
    let cloth = LayoutCloth {
        repeat_along: Some(mm(640)),
        bolt_length: Some(mm(1050)),
        ..plain_cloth(mm(1000))
    };
    assert_all(&cloth, &cases);
}

#[test]
fn half_drop_columns_alternate() {
    let cloth = LayoutCloth {
        repeat_along: Some(mm(200)),
        repeat_across: Some(mm(250)),
        half_drop: true,
        ..plain_cloth(mm(1000))
    };
    let piece = LayoutPiece {
        phase_along: Some(mm(50)),
        phase_across: Some(mm(100)),
        ..plain_piece(mm(200), mm(100), 3)
    };
    let layout = laid(&cloth, &[piece]);
    let places = layout
        .placed
        .iter()
        .map(|it| (it.across, it.along))
        .collect::<Vec<_>>();
    // Points at (250, 100 + 200k) in the odd columns and at (500, 200k) in the even one.
    assert_eq!(
        places,
        [(mm(150), mm(50)), (mm(650), mm(50)), (mm(400), mm(150))]
    );
}

#[test]
fn the_same_pieces_lie_in_the_same_places() {
    let cloth = LayoutCloth {
        repeat_along: Some(mm(320)),
        ..plain_cloth(mm(1370))
    };
    let pieces = [
        held_along(plain_piece(mm(560), mm(700), 6), mm(90)),
        held_along(plain_piece(mm(300), mm(500), 5), mm(200)),
        plain_piece(mm(150), mm(450), 7),
    ];
    assert_eq!(lay(&cloth, &pieces), lay(&cloth, &pieces));
}
