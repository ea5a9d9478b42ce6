//! The checker finds what is broken in any layout, and reads even the oddest.

#![expect(
    clippy::indexing_slicing,
    clippy::arithmetic_side_effects,
    reason = "a test stops at the first broken promise"
)]

mod common;

use common::{LITTLE, a_thousand_cases, any_job, any_length, mm, plain_cloth, plain_piece};
use pelmet_bolt::{
    BoltDirection, BoltLengths, BoltSection, CheckerFinding, Layout, LayoutPiece, Orientation,
    Placed, check, lay_with,
};
use pelmet_measure::Length;
use proptest::prelude::*;

/// A layout in which nothing lies.
fn empty() -> Layout {
    Layout {
        placed: Vec::new(),
        bolts: Vec::new(),
        sections: Vec::new(),
        exact: Length::ZERO,
        bought: Length::ZERO,
        rule_of_thumb: Length::ZERO,
        lower_bound: Length::ZERO,
        stopped_early: false,
    }
}

fn any_placed() -> impl Strategy<Value = Placed> {
    (
        0..4_usize,
        0..6_u32,
        0..3_u32,
        any_length(),
        any_length(),
        prop_oneof![Just(Orientation::Upright), Just(Orientation::Turned)],
    )
        .prop_map(|(piece, copy, bolt, across, along, orientation)| Placed {
            piece,
            copy,
            bolt,
            across,
            along,
            orientation,
        })
}

/// Whether any two pieces of a gap-less layout have cloth in common, compared pair by pair.
fn any_overlap(pieces: &[LayoutPiece], placed: &[Placed]) -> bool {
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
    #![proptest_config(a_thousand_cases())]

    #[test]
    fn an_overlap_is_found_exactly_where_there_is_one(
        sizes in prop::collection::vec((1..5_i64, 1..5_i64), 1..4),
        places in prop::collection::vec((0..3_usize, 0..2_u32, 0..12_i64, 0..12_i64), 0..9),
    ) {
        let pieces: Vec<LayoutPiece> = sizes
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
                orientation: Orientation::Upright,
            })
            .collect();
        let layout = Layout { placed, ..empty() };
        let findings = check(&plain_cloth(mm(20)), &pieces, &layout);
        let found = findings.iter().any(|finding| matches!(finding, CheckerFinding::Overlap { .. }));
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
            let findings = check(&cloth, &pieces, &layout);
            let overlaps = findings.iter().any(|finding| matches!(finding, CheckerFinding::Overlap { .. }));
            prop_assert!(overlaps, "{findings:?}");
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
            let off = CheckerFinding::OffRepeat { placed, direction: BoltDirection::Along };
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
        let [exact, bought, rule_of_thumb, lower_bound] = lengths;
        let sections = sections
            .into_iter()
            .map(|(bolt, [from, to, left, right])| BoltSection {
                bolt,
                from,
                to,
                left_fold: Some(left),
                right_fold: Some(right),
            })
            .collect();
        let bolts = bolts
            .into_iter()
            .map(|(exact, bought)| BoltLengths { exact, bought })
            .collect();
        let layout = Layout { placed, bolts, sections, exact, bought, rule_of_thumb, lower_bound, stopped_early: false };
        let _ = check(&cloth, &pieces, &layout);
    }
}
