//! What holds for every layout, whatever the cloth and the pieces.

mod common;

use common::{LITTLE, a_thousand_cases, any_job, any_length, any_shaped_job};
use pelmet_bolt::{BoltFlaw, LayoutCloth, LayoutPiece, SearchEffort, check, lay_with};
use pelmet_measure::Length;
use proptest::option;
use proptest::prelude::*;

fn any_cloth_at_all() -> impl Strategy<Value = LayoutCloth> {
    (
        (any_length(), any_length(), any_length()),
        (
            option::of(any_length()),
            option::of(any_length()),
            option::of(any_length()),
        ),
        any::<(bool, bool)>(),
        prop::collection::vec(any_flaw_at_all(), 0..3),
    )
        .prop_map(
            |((usable_width, gap, buying_step), repeats, (half_drop, one_way), flaws)| {
                let (repeat_along, repeat_across, bolt_length) = repeats;
                LayoutCloth {
                    usable_width,
                    gap,
                    repeat_along,
                    repeat_across,
                    half_drop,
                    one_way,
                    bolt_length,
                    buying_step,
                    flaws,
                }
            },
        )
}

fn any_flaw_at_all() -> impl Strategy<Value = BoltFlaw> {
    let ends = (any_length(), any_length(), any_length(), any_length());
    (0..4_u32, ends).prop_map(|(bolt, (from, to, left, right))| BoltFlaw {
        bolt,
        from,
        to,
        left,
        right,
    })
}

fn any_piece_at_all() -> impl Strategy<Value = LayoutPiece> {
    let phases = (option::of(any_length()), option::of(any_length()));
    (any_length(), any_length(), 0..20_u32, phases).prop_map(
        |(width, length, quantity, (phase_along, phase_across))| LayoutPiece {
            width,
            length,
            quantity,
            phase_along,
            phase_across,
            outline: None,
            on_fold: false,
        },
    )
}

proptest! {
    #![proptest_config(a_thousand_cases())]

    #[test]
    fn every_layout_is_sound((cloth, pieces) in any_job()) {
        let layout = lay_with(&cloth, &pieces, LITTLE);
        prop_assume!(layout.is_ok());
        if let Ok(layout) = layout {
            prop_assert_eq!(check(&cloth, &pieces, &layout), []);
            prop_assert!(layout.lower_bound <= layout.exact);
            prop_assert!(layout.exact <= layout.rule_of_thumb);
            prop_assert!(layout.exact <= layout.bought);
        }
    }

    #[test]
    fn every_layout_of_shapes_is_sound((cloth, pieces) in any_shaped_job()) {
        if let Ok(layout) = lay_with(&cloth, &pieces, LITTLE) {
            prop_assert_eq!(check(&cloth, &pieces, &layout), []);
            let plain: Vec<LayoutPiece> = pieces.iter().map(|piece| LayoutPiece { outline: None, ..piece.clone() }).collect();
            prop_assert_eq!(layout.rule_of_thumb, lay_with(&cloth, &plain, SearchEffort::NONE).map_or(Length::ZERO, |it| it.rule_of_thumb));
        }
    }

    #[test]
    fn a_cloth_without_end_is_one_bolt((cloth, pieces) in any_job()) {
        let cloth = LayoutCloth { bolt_length: None, ..cloth };
        if let Ok(layout) = lay_with(&cloth, &pieces, LITTLE) {
            prop_assert!(layout.bolts.len() <= 1);
            prop_assert_eq!(layout.bought, layout.exact.round_up_to(cloth.buying_step));
        }
    }

    #[test]
    fn input_nobody_has_looked_at_gives_a_sound_layout_or_a_finding(
        cloth in any_cloth_at_all(),
        pieces in prop::collection::vec(any_piece_at_all(), 0..5),
    ) {
        if let Ok(layout) = lay_with(&cloth, &pieces, LITTLE) {
            prop_assert_eq!(check(&cloth, &pieces, &layout), []);
        }
    }
}
