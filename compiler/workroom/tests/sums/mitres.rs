//! Mitred hems: where the line of the mitre runs over the cut cloth.

use MitrePlace::{Corner, LowerCut, LowerTurn, SideCut, SideTurn};
use OutlineStep::UpToHeading;
use pelmet_measure::Length;
use pelmet_model::{
    Allowance, Fabric, MakingMatter, Matter, MitreMade, MitrePlace, OutlineStep, PanelOrder, Relief,
};
use proptest::prelude::*;

use crate::sample::{
    alone, arc, bulge, cloth, eighths, from, inches, outline, panel, ratio, sound, to,
};

fn mitred(sides: Allowance, lower: Allowance) -> PanelOrder {
    let mut order = panel();
    order.making.mitred = true;
    (order.making.face.edges.sides, order.making.face.edges.lower) = (sides, lower);
    order
}

fn single(depth: i64, turn: i64) -> Allowance {
    Allowance::SingleHem {
        depth: inches(depth),
        turn: eighths(turn),
    }
}

fn double(depth: i64) -> Allowance {
    Allowance::DoubleHem(inches(depth))
}

/// The line of a mitre: every point with its places in eighths of an inch.
type Line = &'static [(MitrePlace, i64, i64)];

#[test]
fn the_line_runs_from_cut_edge_to_cut_edge_through_the_corner() {
    let cases: [(Allowance, Allowance, Line); 4] = [
        // From memory: folded once, it reaches twice the depth of the other hem along each edge.
        (
            single(1, 0),
            single(3, 0),
            &[(SideCut, 0, 48), (Corner, 8, 24), (LowerCut, 16, 0)],
        ),
        // So it does folded twice, for the raw edge lies along the outer fold; the line bends where
        // the hem is folded first.
        (
            double(1),
            double(3),
            &[
                (SideCut, 0, 48),
                (SideTurn, 8, 72),
                (Corner, 16, 48),
                (LowerTurn, 24, 24),
                (LowerCut, 16, 0),
            ],
        ),
        // 1/2 in of the 2 in is turned under: three quarters of the way back, 3 x 3/4 in above the
        // lower fold of 3 in.
        (
            single(2, 4),
            single(3, 0),
            &[
                (SideCut, 0, 42),
                (SideTurn, 4, 48),
                (Corner, 20, 24),
                (LowerCut, 36, 0),
            ],
        ),
        (
            single(1, 0),
            double(2),
            &[
                (SideCut, 0, 48),
                (Corner, 8, 32),
                (LowerTurn, 16, 16),
                (LowerCut, 8, 0),
            ],
        ),
    ];
    for (sides, lower, line) in cases {
        let made = sound(&mitred(sides, lower));
        let corners: Vec<usize> = made.mitres.iter().map(|mitre| mitre.corner).collect();
        assert_eq!(corners, [1, 2]);
        for mitre in &made.mitres {
            let found: Vec<_> = mitre
                .line
                .iter()
                .map(|at| (at.place, at.in_from_side, at.up_from_lower))
                .collect();
            let line: Vec<_> = line
                .iter()
                .map(|&(place, across, up)| (place, eighths(across), eighths(up)))
                .collect();
            assert_eq!(found, line);
        }
    }
}

#[test]
fn a_mitre_is_as_long_as_its_two_hems_are_deep_square_to_one_another() {
    let made = sound(&mitred(single(3, 0), double(4)));
    assert_eq!(made.mitres[0].length, inches(5));
    assert_eq!(made.mitres[0].kept, eighths(4));
    let reliefs: Vec<Option<Relief>> = made
        .shape
        .corners
        .iter()
        .map(|corner| corner.relief)
        .collect();
    let (trim, mitre) = (Some(Relief::Trim), Some(Relief::Mitre));
    assert_eq!(reliefs, [trim, mitre, mitre, trim]);
}

#[test]
fn on_cloth_that_shrinks_the_line_is_marked_larger() {
    let shrinking = Fabric {
        shrinkage: ratio(1, 5),
        width: inches(100),
        ..cloth()
    };
    let (made, matters) = alone(&mitred(single(1, 0), single(2, 0)), &shrinking);
    assert_eq!(matters, []);
    let line = &made.unwrap().mitres[0].line;
    // 4 in / 0.8.
    assert_eq!(line[0].up_from_lower, inches(5));
}

#[test]
fn only_a_square_corner_can_be_mitred() {
    let mut order = mitred(single(1, 0), single(2, 0));
    for (steps, sound) in [
        ([from(0, 14), to(40, 14), UpToHeading].to_vec(), true),
        ([from(0, 12), to(40, 14), UpToHeading].to_vec(), false),
        (
            [from(0, 12), to(9, 12), to(30, 14), to(40, 14), UpToHeading].to_vec(),
            true,
        ),
        // It comes up to the heading without a side.
        ([from(0, 14), to(20, 14), to(40, 0)].to_vec(), false),
    ] {
        order.outline = outline(false, &steps);
        let (made, matters) = alone(&order, &cloth());
        assert_eq!(made.is_some(), sound, "{steps:?}");
        let not_square =
            |matter: &Matter| matches!(matter, Matter::Making(MakingMatter::MitreNotSquare { .. }));
        assert_eq!(matters.iter().any(not_square), !sound, "{matters:?}");
    }
}

#[test]
fn what_keeps_a_corner_from_being_mitred_is_told_with_its_size() {
    let falling = [from(0, 14), to(10, 14), to(40, 12), UpToHeading];
    let swelling = [from(0, 10), arc(40, 10, bulge(4, true)), UpToHeading];
    for (steps, step, across, down, is_curved) in [
        (falling.to_vec(), 2, 30, 2, false),
        (swelling.to_vec(), 1, 40, 0, true),
    ] {
        let mut order = mitred(single(1, 0), single(2, 0));
        order.outline = outline(false, &steps);
        let (_, matters) = alone(&order, &cloth());
        let expected = MakingMatter::MitreNotSquare {
            step: Some(step),
            across: inches(across),
            down: inches(down),
            is_curved,
            has_side: true,
        };
        assert!(matters.contains(&Matter::Making(expected)), "{matters:?}");
    }
}

fn hems() -> impl Strategy<Value = Allowance> {
    let size = 1_000_000_i64..100_000_000;
    prop_oneof![
        size.clone()
            .prop_map(|depth| Allowance::DoubleHem(Length::from_nanometres(depth))),
        (size, 0..=100_i64).prop_map(|(depth, percent)| Allowance::SingleHem {
            depth: Length::from_nanometres(depth),
            turn: Length::from_nanometres(depth / 100 * percent),
        }),
    ]
}

/// Where a place in a hem comes to lie once its raw edge is turned under and the hem turned up, from
/// the finished edge; `from_cut` is how far from the cut edge it is.
fn turned_in(hem: Allowance, from_cut: Length) -> Length {
    let (total, depth) = (hem.total(), hem.hem_depth().unwrap());
    let from_fold = total - from_cut;
    if from_fold > depth {
        depth * 2 - from_fold
    } else {
        from_fold
    }
}

/// Whether a point lies on the finished mitre: as far up as it is in, hem depth for hem depth.
fn on_mitre(across: Length, up: Length, side: Allowance, lower: Allowance) -> bool {
    let (side, lower) = (side.hem_depth().unwrap(), lower.hem_depth().unwrap());
    let off = i128::from(across.nanometres()) * i128::from(lower.nanometres())
        - i128::from(up.nanometres()) * i128::from(side.nanometres());
    // Within the nanometre that a point is rounded by.
    off.abs() <= i128::from(side.max(lower).nanometres())
}

proptest! {
    /// Folded as it is marked, every point of the line on either hem lies on the one finished mitre.
    #[test]
    fn folded_both_halves_of_the_line_meet(side in hems(), lower in hems()) {
        let made = alone(&mitred(side, lower), &cloth()).0;
        let Some(MitreMade { line, .. }) = made.and_then(|made| made.mitres.first().cloned()) else {
            return Ok(());
        };
        for at in &line {
            let (across, up) = match at.place {
                SideCut | SideTurn => {
                    (turned_in(side, at.in_from_side), at.up_from_lower - lower.total())
                }
                Corner => (at.in_from_side - side.total(), at.up_from_lower - lower.total()),
                LowerTurn | LowerCut => {
                    (at.in_from_side - side.total(), turned_in(lower, at.up_from_lower))
                }
            };
            prop_assert!(on_mitre(across, up, side, lower), "{at:?}: {across:?}, {up:?}");
            if matches!(at.place, SideTurn | LowerTurn) {
                prop_assert_eq!((Some(across), Some(up)), (side.hem_depth(), lower.hem_depth()));
            }
        }
    }
}
