//! The one model of folding, against what a folded strip of paper does.
#![expect(
    clippy::unwrap_used,
    clippy::arithmetic_side_effects,
    reason = "a test stops at the first broken promise"
)]

mod common;

use common::{crease_kind, creases, inches};
use pelmet_measure::Length;
use pelmet_model::{CreaseKind, CreaseMade, Folding, StretchMade};
use pelmet_workroom::{ROUNDING, finished_at, fold, is_hidden};
use proptest::prelude::*;

/// The strip as it hangs, inch by inch: the stretch on top, from 0, and how many layers.
fn drawn(folding: &Folding) -> String {
    let runs = folding.layers.iter().map(|run| {
        let wide = (run.to - run.from).nanometres() / Length::INCH.nanometres();
        format!("{wide}in:{}x{}", run.top, run.layers)
    });
    runs.collect::<Vec<_>>().join(" ")
}

#[test]
fn folded_strips_look_like_folded_paper() {
    let cases = [
        ("not folded", 10, "", "10in:0x1", 10),
        ("folded back behind", 10, "M6", "2in:0x1 4in:0x2", 2),
        ("folded over in front", 10, "V6", "2in:0x1 4in:1x2", 2),
        (
            "knife to the left",
            12,
            "V4 M6",
            "2in:0x1 2in:2x3 4in:2x1",
            8,
        ),
        (
            "knife to the right",
            12,
            "M4 V6",
            "2in:0x1 2in:0x3 4in:2x1",
            8,
        ),
        (
            "box closing behind",
            14,
            "V3 M4 M6 V7",
            "2in:0x1 2in:2x3 6in:4x1",
            10,
        ),
        (
            "inverted, folds meeting",
            14,
            "M4 V5 V7 M8",
            "3in:0x1 1in:0x3 1in:4x3 5in:4x1",
            10,
        ),
        ("fan", 4, "V1 M2 V3", "1in:3x4", 0),
        (
            "knife off the left edge",
            8,
            "V1 M3",
            "1in:2x2 1in:2x3 3in:2x1",
            4,
        ),
    ];
    for (name, flat, text, expected, finished) in cases {
        let folding = fold(inches(flat), &creases(text));
        assert_eq!(drawn(&folding), expected, "{name}");
        assert_eq!(folding.finished, inches(finished), "{name}");
    }
}

#[test]
fn a_box_lies_on_its_underfolds_and_they_on_the_cloth_behind() {
    let folding = fold(inches(14), &creases("V3 M4 M6 V7"));
    let heights: Vec<_> = folding
        .stretches
        .iter()
        .map(|stretch| stretch.height)
        .collect();
    // The plain cloth either side, the two underfolds, and the face in front of them all.
    assert_eq!(heights, [0, 1, 4, 3, 2]);
    let shows: Vec<_> = folding
        .stretches
        .iter()
        .map(|stretch| stretch.face_up)
        .collect();
    assert_eq!(shows, [true, false, true, false, true]);
}

#[test]
fn creases_off_the_strip_are_left_out() {
    let mut with_strays = creases("V4 M6");
    with_strays.extend(creases("M-2 V40"));
    assert_eq!(
        fold(inches(12), &with_strays),
        fold(inches(12), &creases("V4 M6"))
    );
}

#[test]
fn the_order_in_which_creases_are_given_does_not_matter() {
    let mut turned = creases("V3 M4 M6 V7");
    turned.reverse();
    assert_eq!(
        fold(inches(14), &turned),
        fold(inches(14), &creases("V3 M4 M6 V7"))
    );
}

#[test]
fn cloth_under_a_knife_pleat_is_hidden_and_its_fold_is_not() {
    // Brought from 6 to 2: what lies between is hidden, the fold and its line are seen.
    let folding = fold(inches(12), &creases("V4 M6"));
    let cases = [
        (0, false),
        (1, false),
        (2, false),
        (3, true),
        (4, true),
        (5, true),
        (6, false),
        (7, false),
    ];
    for (at, hidden) in cases {
        assert_eq!(is_hidden(&folding, inches(at)), hidden, "{at} in");
    }
}

#[test]
fn only_the_underfolds_of_a_box_are_hidden() {
    let folding = fold(inches(14), &creases("V3 M4 M6 V7"));
    let hidden: Vec<_> = (0..=28)
        .filter(|half| is_hidden(&folding, Length::inch_fraction(*half, 2)))
        .collect();
    // From the line of the left fold (2 in) to the fold (4 in), and the same at the right.
    assert_eq!(hidden, [5, 6, 7, 13, 14, 15]);
}

#[test]
fn nothing_off_the_strip_is_hidden() {
    let folding = fold(inches(12), &creases("V4 M6"));
    assert!(!is_hidden(&folding, inches(-1)));
    assert!(!is_hidden(&folding, inches(13)));
    assert!(!is_hidden(&Folding::default(), inches(1)));
}

#[test]
fn a_stack_as_narrow_as_rounding_is_not_the_thickest() {
    let sliver = |at: Length, mountain| CreaseMade {
        at,
        kind: crease_kind(mountain),
        pleat: 0,
    };
    let narrow = [sliver(inches(4), false), sliver(inches(4) + ROUNDING, true)];
    assert_eq!(fold(inches(12), &narrow).thickest, 1);
    let wide = [
        sliver(inches(4), false),
        sliver(inches(4) + ROUNDING * 2, true),
    ];
    assert_eq!(fold(inches(12), &wide).thickest, 3);
}

proptest! {
    #[test]
    fn the_finished_position_turns_at_creases_and_never_jumps((flat, creases) in strip()) {
        let folding = fold(flat, &creases);
        let mut end = (Length::ZERO, Length::ZERO);
        for (index, stretch) in folding.stretches.iter().enumerate() {
            prop_assert_eq!((stretch.flat_from, stretch.finished_from), end);
            prop_assert_eq!(stretch.face_up, index % 2 == 0);
            let along = stretch.finished_to - stretch.finished_from;
            let width = stretch.flat_to - stretch.flat_from;
            prop_assert_eq!(along, if stretch.face_up { width } else { -width });
            end = (stretch.flat_to, stretch.finished_to);
        }
        prop_assert_eq!(end, (flat, folding.finished));
    }

    #[test]
    fn layers_times_length_is_all_the_cloth((flat, creases) in strip()) {
        let folding = fold(flat, &creases);
        let cloth: Length =
            folding.layers.iter().map(|run| (run.to - run.from) * i64::from(run.layers)).sum();
        prop_assert_eq!(cloth, flat);
        for pair in folding.layers.windows(2) {
            prop_assert_eq!(pair[0].to, pair[1].from);
        }
        prop_assert_eq!(folding.leftmost, folding.layers[0].from);
    }

    #[test]
    fn the_top_of_every_run_is_the_highest_stretch_over_it((flat, creases) in strip()) {
        let folding = fold(flat, &creases);
        for run in &folding.layers {
            // A layer may end inside a run where another begins.
            let nanometre = Length::from_nanometres(1);
            for (from, to) in [(run.from, run.from + nanometre), (run.to - nanometre, run.to)] {
                let over =
                    |stretch: &&StretchMade| stretch.span().0 <= from && to <= stretch.span().1;
                let all: Vec<_> = folding.stretches.iter().filter(over).collect();
                prop_assert_eq!(all.len(), usize::try_from(run.layers).unwrap());
                let highest = all.iter().map(|stretch| stretch.height).max().unwrap();
                prop_assert_eq!(folding.stretches[run.top].height, highest);
            }
        }
    }

    #[test]
    fn heights_are_a_permutation((flat, creases) in strip()) {
        let folding = fold(flat, &creases);
        let mut heights: Vec<_> = folding.stretches.iter().map(|stretch| stretch.height).collect();
        heights.sort_unstable();
        prop_assert_eq!(heights, (0..folding.stretches.len()).collect::<Vec<_>>());
    }

    /// Two stretches that share a crease lie in the order its kind says, and only cloth laid later
    /// can have come between them.
    #[test]
    fn every_crease_lays_its_two_stretches_in_order((flat, creases) in strip()) {
        let folding = fold(flat, &creases);
        let mut sorted = creases;
        sorted.sort_by_key(|crease| crease.at);
        for (index, (pair, crease)) in folding.stretches.windows(2).zip(&sorted).enumerate() {
            let (before, after) = (pair[0].height, pair[1].height);
            let on_top = pair[0].face_up != (crease.kind == CreaseKind::Mountain);
            prop_assert_eq!(after > before, on_top);
            let between = before.min(after)..=before.max(after);
            for (other, stretch) in folding.stretches.iter().enumerate() {
                prop_assert!(!between.contains(&stretch.height) || other >= index);
            }
        }
    }

    #[test]
    fn what_is_not_hidden_is_on_top_somewhere((flat, creases) in strip(), part in 0_u64..=1000) {
        let folding = fold(flat, &creases);
        let at = flat.portion(part, 1000);
        let seen = folding.stretches.iter().enumerate().any(|(index, stretch)| {
            let here = stretch.flat_from <= at && at <= stretch.flat_to;
            let finished = finished_at(stretch, at);
            here && folding.layers.iter().any(|run| {
                run.top == index && run.from <= finished && finished <= run.to
            })
        });
        prop_assert_eq!(is_hidden(&folding, at), !seen);
    }

    #[test]
    fn any_creases_are_folded(flat in any::<i64>(), at in prop::collection::vec(any::<(i64, bool)>(), 0..9)) {
        let crease = |(at, mountain)| CreaseMade { at: Length::from_nanometres(at), kind: crease_kind(mountain), pleat: 0 };
        let creases: Vec<_> = at.into_iter().map(crease).collect();
        let folding = fold(Length::from_nanometres(flat), &creases);
        let _ = is_hidden(&folding, Length::ZERO);
    }
}

/// A strip and creases on it, some of them in the same place.
fn strip() -> impl Strategy<Value = (Length, Vec<CreaseMade>)> {
    let crease = (0_i64..400, any::<bool>());
    let all = prop::collection::vec(crease, 0..24);
    (400_i64..500, all).prop_map(|(flat, creases)| {
        let eighths = |eighths| Length::inch_fraction(eighths, 8);
        let crease = |(at, mountain)| CreaseMade {
            at: eighths(at),
            kind: crease_kind(mountain),
            pleat: 0,
        };
        (eighths(flat), creases.into_iter().map(crease).collect())
    })
}
