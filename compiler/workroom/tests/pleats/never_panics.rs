//! Rules nobody would sew, which must still be answered.

use pelmet_measure::{Length, Ratio};
use pelmet_model::{
    FoldPlace, PleatKind, PleatOrder, PleatRule, PleatStep, Ranged, Start, StepKind, TowardOrder,
};
use pelmet_workroom::{check, fold_pleating, is_hidden, lay_out, tolerance};
use proptest::prelude::*;

use crate::rules::*;

proptest! {
    // Each case may be a strip of thousands of pieces.
    #![proptest_config(ProptestConfig::with_cases(64))]

    #[test]
    fn any_rule_is_answered(
        rule in wild_rule(),
        finished in prop::option::of(wild_length()),
        flat in prop::option::of(wild_length()),
    ) {
        let _ = tolerance(&rule, 2_000);
        if let Ok(laid) = lay_out(&rule, finished, flat) {
            let folding = fold_pleating(&laid);
            let _ = check(&rule, &laid, &folding);
            let _ = is_hidden(&folding, laid.flat.divided(3));
        }
    }
}

fn wild_length() -> impl Strategy<Value = Length> {
    prop_oneof![
        (-400_i64..4000).prop_map(|eighths| Length::inch_fraction(eighths, 8)),
        (-9_i64..9).prop_map(Length::from_nanometres),
        any::<i64>().prop_map(Length::from_nanometres),
        Just(Length::LARGEST),
    ]
}

fn wild_range() -> impl Strategy<Value = Ranged<Length>> {
    (wild_length(), wild_length(), wild_length()).prop_map(|(least, ideal, most)| Ranged {
        least,
        ideal,
        most,
    })
}

fn wild_pleat() -> impl Strategy<Value = StepKind> {
    let kind = prop_oneof![
        Just(pointing(PleatKind::Knife, TowardOrder::Centre)),
        Just(pointing(PleatKind::Knife, TowardOrder::Right)),
        prop::option::of(wild_range()).prop_map(|face| faced(PleatKind::Box, face)),
        prop::option::of(wild_range()).prop_map(|face| faced(PleatKind::DoubleBox, face)),
        prop::option::of(wild_range()).prop_map(|face| faced(PleatKind::Inverted, face)),
        Just(of(PleatKind::Kick)),
        Just(pointing(PleatKind::Tuck, TowardOrder::Edge)),
        (any::<u32>(), prop::option::of(wild_range()))
            .prop_map(|(fingers, face)| pinch(fingers % 6, face)),
        (
            prop::option::of((any::<i64>(), 1_i64..i64::MAX)),
            prop::option::of(wild_range())
        )
            .prop_map(|(ratio, to)| {
                let ratio = ratio.map(|(over, under)| Ratio::new(over.into(), under.into()));
                drawn_up(PleatKind::Gathers, ratio, to)
            }),
    ];
    let place = prop::option::of(prop_oneof![
        wild_length().prop_map(FoldPlace::At),
        wild_length().prop_map(FoldPlace::On),
    ]);
    (kind, wild_range(), place).prop_map(|(order, depth, place)| {
        StepKind::Pleat(PleatOrder {
            depth,
            place,
            ..order
        })
    })
}

fn wild_steps() -> impl Strategy<Value = Vec<PleatStep>> {
    let leaf = prop_oneof![
        wild_range().prop_map(StepKind::Plain),
        Just(StepKind::Rest),
        wild_pleat()
    ];
    let count = prop_oneof![0_u32..4, Just(60), any::<u32>()];
    let step = leaf.prop_recursive(3, 12, 3, move |inner| {
        let steps = prop::collection::vec(inner, 0..3).prop_map(numbered);
        (count.clone(), count.clone(), steps).prop_map(|(least, most, steps)| StepKind::Repeat {
            count: Ranged {
                least,
                ideal: least,
                most,
            },
            steps,
        })
    });
    prop::collection::vec(step, 0..4).prop_map(numbered)
}

fn numbered(kinds: Vec<StepKind>) -> Vec<PleatStep> {
    kinds
        .into_iter()
        .enumerate()
        .map(|(number, kind)| PleatStep { number, kind })
        .collect()
}

fn wild_rule() -> impl Strategy<Value = PleatRule> {
    let start = prop_oneof![Just(Start::Left), Just(Start::Centre)];
    (
        start,
        any::<bool>(),
        wild_steps(),
        prop::option::of(wild_length()),
        prop::option::of(wild_length()),
    )
        .prop_map(
            |(start, mirrored, steps, folding_error, turn_of_cloth)| PleatRule {
                name: String::new(),
                start,
                mirrored,
                steps,
                layers: None,
                print: None,
                folding_error,
                turn_of_cloth,
            },
        )
}
