//! What must hold for every rule.

use pelmet_measure::Length;
use pelmet_model::{
    CreaseMade, FoldPlace, Folding, Held, LayerRun, PleatKind, PleatMade, PleatMatter, PleatRule,
    PleatStep, Pleating, Ranged, Start, StepKind, StretchMade, TowardOrder,
};
use pelmet_workroom::{ROUNDING, check, fold_pleating, lay_out};
use proptest::prelude::*;

use crate::rules::*;

proptest! {
    /// Any mix of pleats: finished is flat less take-ups and turns of cloth, and the folding comes
    /// to the same places as the sums.
    #[test]
    fn the_sums_and_the_folding_agree(rule in any_rule(), wanted in length(20, 400)) {
        for (finished, flat) in [(Some(wanted), None), (None, Some(wanted))] {
            let Ok(laid) = lay_out(&rule, finished, flat) else { continue };
            let take_up: Length = laid.pleats.iter().map(|pleat| pleat.take_up).sum();
            let turns: Length = laid.pleats.iter().map(PleatMade::lost_in_turns).sum();
            prop_assert_eq!(laid.finished, laid.flat - take_up - turns);
            let folding = fold_pleating(&laid);
            prop_assert_eq!(folding.finished, laid.finished);
            for drawn in laid.pleats.iter().flat_map(|pleat| &pleat.folds) {
                prop_assert_eq!(finished_at(&folding, drawn.crease), drawn.finished);
            }
        }
    }

    #[test]
    fn a_wanted_width_is_met_exactly_and_within_the_ranges(
        rule in any_rule(),
        wanted in length(20, 400),
    ) {
        for (finished, flat) in [(Some(wanted), None), (None, Some(wanted))] {
            let Ok(laid) = lay_out(&rule, finished, flat) else { continue };
            prop_assert_eq!(if finished.is_some() { laid.finished } else { laid.flat }, wanted);
            for pleat in &laid.pleats {
                let range = depth_range(&rule, pleat.step).unwrap();
                let stated = match pleat.kind {
                    PleatKind::Pinch | PleatKind::Goblet => pleat.take_up,
                    _ => pleat.depth,
                };
                prop_assert!(range.least <= stated && stated <= range.most);
            }
            prop_assert!(in_order(&laid));
        }
    }

    /// The widths offered instead of one that does not fit do fit, with the pleats promised.
    #[test]
    fn the_nearest_widths_work(rule in any_rule(), wanted in length(1, 400)) {
        for by_finished in [true, false] {
            let widths = |width| if by_finished { (Some(width), None) } else { (None, Some(width)) };
            let (finished, flat) = widths(wanted);
            let Err(PleatMatter::NoFit { below, above, .. }) = lay_out(&rule, finished, flat) else {
                continue;
            };
            prop_assert!(below.is_none_or(|(width, _)| width < wanted));
            prop_assert!(above.is_none_or(|(width, _)| width > wanted));
            for (width, pleats) in below.into_iter().chain(above) {
                let (finished, flat) = widths(width);
                prop_assert!(lay_out(&rule, finished, flat).is_ok(), "{width:?}");
                // Where faces overlap, a very large count can come out narrow.
                let most_turns = if pleats > 100 { 1_000 } else { 60 };
                let promised = (1..=most_turns).any(|turns| {
                    let laid = lay_out(&with_turns(&rule, turns), finished, flat);
                    laid.is_ok_and(|laid| u32::try_from(laid.pleats.len()) == Ok(pleats))
                });
                prop_assert!(promised, "{width:?} in {pleats}");
            }
        }
    }

    /// Laid flat, each stretch is as wide as it hangs and the turn of a crease lies half on either
    /// side of it; so what the cloth is wider than its folds is what all creases lose.
    #[test]
    fn what_turns_lose_is_added_to_the_flat_width_at_the_creases(
        rule in any_rule(),
        turn in length(0, 3),
        wanted in length(60, 400),
    ) {
        // With one half plain, its width follows from the flat width, and the sums from both.
        prop_assume!(rule.mirrored || rule.start == Start::Left);
        let thin = PleatRule { turn_of_cloth: None, ..rule.clone() };
        let Ok(thin) = lay_out(&thin, Some(wanted), None) else { return Ok(()) };
        let thick = PleatRule { turn_of_cloth: Some(turn), ..rule };
        let thick = lay_out(&thick, Some(wanted), None).unwrap();
        let lost: Length = thick.pleats.iter().map(PleatMade::lost_in_turns).sum();
        // An odd nanometre cannot lie half on either side.
        let turn = turn.divided(2) * 2;
        let stitched = |crease: &&CreaseMade| thick.pleats[crease.pleat].held == Held::Stitched;
        let creases = thick.creases.iter().filter(|crease| !stitched(crease)).count();
        prop_assert_eq!(lost, turn * i64::try_from(creases).unwrap());
        prop_assert_eq!(thick.flat, thin.flat + lost);
        let (thick, thin) = (fold_pleating(&thick), fold_pleating(&thin));
        prop_assert_eq!(thick.finished, thin.finished);
        prop_assert_eq!(widths(&thick), widths(&thin));
        let runs = |run: &LayerRun| (run.from, run.to, run.layers);
        let layers = |folding: &Folding| joined(folding.layers.iter().map(runs));
        prop_assert_eq!(layers(&thick), layers(&thin));
    }

    /// Cloth that reaches past the finished width, by more than the bend of a crease, is reported.
    #[test]
    fn an_extent_beyond_the_finished_width_is_reported(
        rule in any_rule(),
        wanted in length(20, 400),
    ) {
        let Ok(laid) = lay_out(&rule, Some(wanted), None) else { return Ok(()) };
        let folding = fold_pleating(&laid);
        let bend = rule.turn_of_cloth.unwrap_or_default().divided(2) + ROUNDING;
        let beyond = (-folding.leftmost).max(folding.rightmost - folding.finished) > bend;
        if beyond {
            prop_assert!(!check(&rule, &laid, &folding).is_empty());
        }
    }

    /// A width made up from values within the ranges is always met.
    #[test]
    fn whatever_can_be_made_is_found(
        rule in any_rule(),
        turns in 1_u32..12,
        along in prop::collection::vec(0_u8..=255, 64),
    ) {
        let fixed = some_fixed_form(&rule, turns, &along);
        let made = lay_out(&fixed, None, None).unwrap();
        let by_finished = lay_out(&rule, Some(made.finished), None).unwrap();
        prop_assert_eq!(by_finished.finished, made.finished);
        let by_flat = lay_out(&rule, None, Some(made.flat)).unwrap();
        prop_assert_eq!(by_flat.flat, made.flat);
    }

    #[test]
    fn a_mirrored_panel_is_its_own_mirror_image(rule in any_rule(), wanted in length(20, 400)) {
        for start in [Start::Left, Start::Centre] {
            let rule = PleatRule { start, mirrored: true, ..rule.clone() };
            let Ok(laid) = lay_out(&rule, Some(wanted), None) else { continue };
            let mut image: Vec<_> = laid
                .creases
                .iter()
                .map(|crease| (laid.flat - crease.at, crease.kind))
                .collect();
            let mut creases: Vec<_> =
                laid.creases.iter().map(|crease| (crease.at, crease.kind)).collect();
            image.sort_unstable();
            creases.sort_unstable();
            prop_assert_eq!(image, creases);
            let folding = fold_pleating(&laid);
            prop_assert_eq!(folding.leftmost, folding.finished - folding.rightmost);
            let spans = |run: &LayerRun| (run.from, run.to, run.layers);
            let runs = joined(folding.layers.iter().map(spans));
            let mirror = |(from, to, layers)| (laid.finished - to, laid.finished - from, layers);
            let image = joined(runs.iter().rev().copied().map(mirror));
            prop_assert_eq!(image, runs);
        }
    }

    /// Spaces of the same range differ by no more than a nanometre.
    #[test]
    fn equal_spaces_come_out_equal(count in 2_u32..40, wanted in length(40, 120)) {
        let space = open(Length::ZERO, Length::inches(99), Length::inches(2));
        let steps = vec![space, knife(Length::INCH, TowardOrder::Left)];
        let rule = from_left(vec![repeat(Ranged::fixed(count), steps)]);
        let laid = lay_out(&rule, Some(wanted), None).unwrap();
        let spaces: Vec<_> =
            laid.pleats.windows(2).map(|pair| pair[1].from - pair[0].to).collect();
        for pair in spaces.windows(2) {
            prop_assert!((pair[0] - pair[1]).abs() <= Length::from_nanometres(1));
        }
    }

    #[test]
    fn both_widths_are_met_wherever_a_depth_allows(
        pleats in 1_u32..30,
        depth in length(4, 16),
        space in length(8, 40),
    ) {
        let depths = Ranged::between(inches(2), inches(32), inches(10));
        let kind = pointing(PleatKind::Knife, TowardOrder::Left);
        let spaces = open(inches(2), inches(80), inches(20));
        let rule = from_left(vec![
            repeat(Ranged::fixed(pleats), vec![spaces, pleat(kind, depths)]),
            plain(Length::inches(3)),
        ]);
        let finished = space * i64::from(pleats) + Length::inches(3);
        let flat = finished + depth * 2 * i64::from(pleats);
        let laid = lay_out(&rule, Some(finished), Some(flat)).unwrap();
        prop_assert_eq!((laid.finished, laid.flat), (finished, flat));
        for pleat in &laid.pleats {
            prop_assert!((pleat.depth - depth).abs() <= Length::from_nanometres(1));
        }
    }

    #[test]
    fn a_placed_fold_keeps_its_place_whatever_the_width(
        place in length(32, 80),
        flat in length(400, 900),
        turn_of_cloth in prop::option::of(length(0, 4)),
    ) {
        let knife = knife(Length::INCH, TowardOrder::Left);
        let rule = from_left(vec![placed(knife, FoldPlace::At(place))]);
        let rule = PleatRule { turn_of_cloth, ..rule };
        let laid = lay_out(&rule, None, Some(flat)).unwrap();
        prop_assert_eq!(laid.pleats[0].folds[0].crease, place);
    }
}

/// A length of so many eighths of an inch, and some nanometres.
fn length(least: i64, most: i64) -> impl Strategy<Value = Length> {
    (least..most, 0_i64..1000)
        .prop_map(|(eighths, over)| inches(eighths) + Length::from_nanometres(over))
}

fn ranged(least: i64, most: i64) -> impl Strategy<Value = Ranged<Length>> {
    (
        length(least, most),
        length(least, most),
        length(least, most),
    )
        .prop_map(|(one, other, ideal)| Ranged::between(one, other, ideal))
}

fn any_pleat() -> impl Strategy<Value = StepKind> {
    let any_toward = || {
        prop_oneof![
            Just(TowardOrder::Left),
            Just(TowardOrder::Right),
            Just(TowardOrder::Centre),
            Just(TowardOrder::Edge),
        ]
    };
    let (toward, tuck_toward) = (any_toward(), any_toward());
    let face = || prop::option::of(ranged(8, 48));
    let kind = prop_oneof![
        toward.prop_map(|toward| pointing(PleatKind::Knife, toward)),
        face().prop_map(|face| faced(PleatKind::Box, face)),
        face().prop_map(|face| faced(PleatKind::DoubleBox, face)),
        face().prop_map(|face| faced(PleatKind::Inverted, face)),
        Just(of(PleatKind::Kick)),
        tuck_toward.prop_map(|toward| pointing(PleatKind::Tuck, toward)),
        (2_u32..=5, face()).prop_map(|(fingers, face)| pinch(fingers, face)),
        face().prop_map(|face| faced(PleatKind::Goblet, face)),
    ];
    (kind, ranged(2, 24)).prop_map(|(kind, depth)| pleat(kind, depth))
}

fn any_rule() -> impl Strategy<Value = PleatRule> {
    let space = || ranged(4, 40).prop_map(StepKind::Plain);
    let turn = prop::collection::vec(prop_oneof![space(), any_pleat()], 1..4);
    let starts = prop_oneof![Just(Start::Left), Just(Start::Centre)];
    let turns_of_cloth = prop::option::of(length(0, 3));
    let manner = (starts, any::<bool>(), turns_of_cloth);
    (space(), turn, any_pleat(), space(), manner).prop_map(
        |(first, turn, last, margin, (start, mirrored, turn_of_cloth))| PleatRule {
            turn_of_cloth,
            ..rule(start, mirrored, vec![first, any_number(turn), last, margin])
        },
    )
}

fn with_turns(rule: &PleatRule, turns: u32) -> PleatRule {
    let mut fixed = rule.clone();
    for step in &mut fixed.steps {
        if let StepKind::Repeat { count, .. } = &mut step.kind {
            *count = Ranged::fixed(turns);
        }
    }
    fixed
}

/// The rule with its count and every length settled somewhere in its range.
fn some_fixed_form(rule: &PleatRule, turns: u32, along: &[u8]) -> PleatRule {
    let mut fixed = with_turns(rule, turns);
    let mut along = along.iter().copied().cycle();
    settle(&mut fixed.steps, &mut || along.next().unwrap());
    fixed
}

fn settle(steps: &mut [PleatStep], along: &mut dyn FnMut() -> u8) {
    for step in steps {
        match &mut step.kind {
            StepKind::Plain(range) => *range = somewhere(*range, along()),
            StepKind::Rest => {}
            StepKind::Pleat(order) => {
                order.depth = somewhere(order.depth, along());
                if let Some(face) = &mut order.face {
                    *face = somewhere(*face, along());
                }
            }
            StepKind::Repeat { steps, .. } => settle(steps, along),
        }
    }
}

fn somewhere(range: Ranged<Length>, along: u8) -> Ranged<Length> {
    let beyond_least = (range.most - range.least).portion(along.into(), u8::MAX.into());
    Ranged::fixed(range.least + beyond_least)
}

fn depth_range(rule: &PleatRule, number: usize) -> Option<Ranged<Length>> {
    fn find(steps: &[PleatStep], number: usize) -> Option<Ranged<Length>> {
        steps.iter().find_map(|step| match &step.kind {
            StepKind::Repeat { steps, .. } => find(steps, number),
            StepKind::Pleat(order) if step.number == number => Some(order.depth),
            _ => None,
        })
    }
    find(&rule.steps, number)
}

fn in_order(laid: &Pleating) -> bool {
    let apart = |pair: &[PleatMade]| pair[0].to <= pair[1].from + ROUNDING;
    laid.pleats.windows(2).all(apart)
        && laid.creases.windows(2).all(|pair| pair[0].at <= pair[1].at)
}

fn finished_at(folding: &Folding, flat_at: Length) -> Length {
    let holds = |stretch: &&StretchMade| stretch.flat_from <= flat_at && flat_at <= stretch.flat_to;
    let stretch = folding.stretches.iter().find(holds).unwrap();
    pelmet_workroom::finished_at(stretch, flat_at)
}

/// The widths of the stretches that have any, as they lie.
fn widths(folding: &Folding) -> Vec<Length> {
    let widths = folding.stretches.iter().map(StretchMade::laid);
    widths.filter(|width| !width.is_zero()).collect()
}

/// Runs with the same number of layers put together.
fn joined(runs: impl Iterator<Item = (Length, Length, u32)>) -> Vec<(Length, Length, u32)> {
    let mut joined: Vec<(Length, Length, u32)> = Vec::new();
    for run in runs {
        match joined.last_mut() {
            Some(last) if last.2 == run.2 => last.1 = run.1,
            _ => joined.push(run),
        }
    }
    joined
}
