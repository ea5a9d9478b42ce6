//! Pieces cut on the fold: which stretches of the bolt are folded, and which lie open.

#![expect(
    clippy::unwrap_used,
    reason = "a test stops at the first broken promise"
)]

mod common;

use common::{LITTLE, any_job, mm, plain_cloth, plain_piece};
use pelmet_bolt::{
    BoltSection, CheckerFinding, Layout, LayoutCloth, LayoutPiece, check, lay, lay_with,
};
use proptest::prelude::*;

fn folded(width: i64, length: i64, quantity: u32) -> LayoutPiece {
    LayoutPiece {
        on_fold: true,
        ..plain_piece(mm(width), mm(length), quantity)
    }
}

fn laid(pieces: &[LayoutPiece]) -> Layout {
    let layout = lay(&cloth(), pieces).unwrap();
    assert_eq!(check(&cloth(), pieces, &layout), []);
    layout
}

fn cloth() -> LayoutCloth {
    LayoutCloth {
        gap: mm(10),
        ..plain_cloth(mm(1300))
    }
}

/// A section in millimetres: where it ends, and the folds from the left and from the right.
fn section(from: i64, to: i64, left: Option<i64>, right: Option<i64>) -> BoltSection {
    BoltSection {
        bolt: 0,
        from: mm(from),
        to: mm(to),
        left_fold: left.map(mm),
        right_fold: right.map(mm),
    }
}

#[test]
fn without_pieces_on_the_fold_nothing_is_said_of_folding() {
    assert_eq!(laid(&[plain_piece(mm(400), mm(700), 5)]).sections, []);
}

#[test]
fn the_cloth_is_folded_over_by_half_of_what_is_cut_on_the_fold() {
    let pieces = [plain_piece(mm(500), mm(700), 1), folded(600, 700, 1)];
    let layout = laid(&pieces);
    assert_eq!(layout.sections, [section(0, 700, Some(300), None)]);
    let open = layout.placed.iter().find(|it| it.piece == 0).unwrap();
    assert_eq!(open.across, mm(610));
}

#[test]
fn two_pieces_in_a_row_are_folded_from_both_edges_and_a_third_lies_open() {
    let pieces = [
        folded(400, 700, 1),
        folded(500, 700, 1),
        folded(300, 700, 1),
    ];
    let layout = laid(&pieces);
    assert_eq!(layout.sections, [section(0, 700, Some(250), Some(1100))]);
    let doubled = |it: &&pelmet_bolt::Placed| layout.sections[0].doubles(&pieces[it.piece], it);
    let folded: Vec<usize> = layout
        .placed
        .iter()
        .filter(doubled)
        .map(|it| it.piece)
        .collect();
    assert_eq!(folded, [1, 0]);
}

#[test]
fn stretches_that_lie_alike_are_one_section() {
    let pieces = [folded(1200, 800, 3), plain_piece(mm(1200), mm(500), 1)];
    let sections = laid(&pieces).sections;
    let (open, on_fold): (Vec<&BoltSection>, Vec<&BoltSection>) = sections
        .iter()
        .partition(|section| section.left_fold.is_none());
    assert_eq!((open.len(), on_fold.len()), (1, 1), "{sections:?}");
    assert_eq!(on_fold[0].left_fold, Some(mm(600)));
    let length = on_fold[0].to - on_fold[0].from;
    // Three lengths and the gaps between them, and before them if the open piece comes first.
    assert!([mm(2420), mm(2430)].contains(&length), "{sections:?}");
}

/// A piece held across the cloth cannot be brought to its edge; if another lies where the turned half
/// would fall, the stretch lies open.
#[test]
fn a_piece_held_away_from_the_edges_is_cut_open() {
    let printed = LayoutCloth {
        repeat_across: Some(mm(650)),
        ..cloth()
    };
    let held = LayoutPiece {
        phase_across: Some(mm(200)),
        ..folded(400, 700, 1)
    };
    let beside = plain_piece(mm(440), mm(700), 2);
    let pieces = [held, beside];
    let layout = lay(&printed, &pieces).unwrap();
    assert_eq!(check(&printed, &pieces, &layout), []);
    assert_eq!(layout.sections, [section(0, 700, None, None)]);
}

#[test]
fn the_checker_finds_folds_that_cannot_be_made() {
    let pieces = [plain_piece(mm(500), mm(700), 1), folded(600, 700, 1)];
    let sound = laid(&pieces);
    let findings = |sections: &[BoltSection]| {
        let layout = Layout {
            sections: sections.to_vec(),
            ..sound.clone()
        };
        check(&cloth(), &pieces, &layout)
    };
    let wrong_fold = [CheckerFinding::WrongFold { section: 0 }];
    assert_eq!(findings(&[section(0, 700, Some(310), None)]), wrong_fold);
    assert_eq!(
        findings(&[section(0, 700, Some(300), Some(900))]),
        wrong_fold
    );
    assert_eq!(findings(&[section(0, 700, None, Some(300))]), wrong_fold);
    let cut = [
        CheckerFinding::WrongSection { section: 0 },
        CheckerFinding::InNoSection { placed: 0 },
    ];
    let found = findings(&[section(0, 690, None, None)]);
    assert!(
        cut.iter().all(|finding| found.contains(finding)),
        "{found:?}"
    );
    let gap = findings(&[section(10, 700, None, None)]);
    assert!(
        gap.contains(&CheckerFinding::WrongSection { section: 0 }),
        "{gap:?}"
    );
    assert_eq!(findings(&[]), [CheckerFinding::InNoSection { placed: 0 }]);
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    /// Folding is no reason to buy more.
    #[test]
    fn pieces_on_the_fold_take_no_more_cloth_than_open_ones((cloth, pieces) in any_job()) {
        let open: Vec<LayoutPiece> = pieces
            .iter()
            .map(|piece| LayoutPiece { on_fold: false, ..piece.clone() })
            .collect();
        if let Ok(layout) = lay_with(&cloth, &pieces, LITTLE) {
            let open = lay_with(&cloth, &open, LITTLE).unwrap();
            prop_assert_eq!(layout.exact, open.exact);
            prop_assert_eq!(layout.bought, open.bought);
            prop_assert_eq!(layout.lower_bound, open.lower_bound);
        }
    }
}
