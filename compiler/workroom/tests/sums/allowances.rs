//! The cut line: every edge moved out by its own allowance.

use OutlineStep::UpToHeading;
use pelmet_measure::{Area, Length};
use pelmet_model::{
    Allowance, EdgeAllowances, LayerMaking, Matter, Outline, OutlineMatter, OutlineStep,
    PanelOrder, Shape,
};
use pelmet_workroom::LONGEST_POINT;

use crate::sample::{
    alone, cloth, eighths, from, inches, made, notch, outline, panel, ratio, seams, sound, to,
    window,
};

fn shaped(outline: Outline, face: LayerMaking) -> PanelOrder {
    let mut order = PanelOrder { outline, ..panel() };
    order.making.face = face;
    order
}

fn points(shape: &Shape) -> Vec<(Length, Length)> {
    shape
        .corners
        .iter()
        .map(|corner| (corner.at.across, corner.at.down))
        .collect()
}

#[test]
fn every_edge_moves_by_its_own_allowance_exactly() {
    let face = LayerMaking {
        edges: EdgeAllowances {
            top: Allowance::Seam(eighths(3)),
            sides: Allowance::SingleHem {
                depth: inches(1),
                turn: eighths(4),
            },
            lower: Allowance::DoubleHem(inches(2)),
            band: Allowance::Seam(Length::ZERO),
        },
        longer: inches(1),
        wider: eighths(6),
    };
    let piece = &sound(&shaped(Outline::straight(inches(14)), face)).pieces[0];
    let (left, right) = (-eighths(15), inches(40) + eighths(15));
    let (top, lower) = (-eighths(11), inches(18));
    assert_eq!(
        points(&piece.outline),
        [(left, top), (left, lower), (right, lower), (right, top)]
    );
    assert_eq!(piece.cut_width, inches(40) + eighths(30));
    assert_eq!(piece.cut_length, inches(18) + eighths(11));
    assert_eq!(piece.area, Area::of(piece.cut_width, piece.cut_length));
    let totals: Vec<_> = piece.allowances.iter().map(|(.., total)| *total).collect();
    assert_eq!(totals, [eighths(11), eighths(15), inches(4)]);
}

#[test]
fn a_notch_gets_narrower_and_less_deep_at_its_mouth_only() {
    let steps = [
        from(0, 14),
        notch((20, 14), (4, 3), true),
        to(40, 14),
        UpToHeading,
    ];
    let piece = &sound(&shaped(outline(false, &steps), seams(eighths(4)))).pieces[0];
    let half = eighths(4);
    let notch = [(18, 14), (18, 11), (22, 11), (22, 14)].map(|(across, down)| {
        let inward = if across == 18 { half } else { -half };
        (inches(across) + inward, inches(down) + half)
    });
    assert_eq!(points(&piece.outline)[2..6], notch);
}

#[test]
fn allowances_may_be_taken_away() {
    let face = LayerMaking {
        longer: -inches(1),
        wider: -inches(2),
        ..seams(eighths(4))
    };
    let piece = &sound(&shaped(Outline::straight(inches(14)), face)).pieces[0];
    assert_eq!(
        (piece.cut_width, piece.cut_length),
        (inches(39), inches(14))
    );
}

/// A slanted corner is right to the nanometre: each moved edge is as far from its own as it should.
#[test]
fn slanted_edges_move_square_to_themselves() {
    // A lower edge that falls 9 in over 12 in, so 15 in long.
    let steps = [from(0, 5), to(12, 14), to(40, 14), UpToHeading];
    let piece = &sound(&shaped(outline(false, &steps), seams(inches(1)))).pieces[0];
    // The lines x = -1 and y = 5 + 3/4 x + 5/4 meet at 5 1/2; y = 15 meets the slant at 11 2/3.
    let corners = points(&piece.outline);
    assert_eq!(corners[1], (-inches(1), eighths(44)));
    let two_thirds = Length::inch_fraction(35, 3);
    assert!((corners[2].0 - two_thirds).abs() <= Length::from_nanometres(1));
    assert_eq!(corners[2].1, inches(15));
}

#[test]
fn a_sharp_point_is_cut_off_square() {
    // A point 2 in wide and 10 in long hangs from a level edge.
    let steps = [
        from(0, 4),
        to(19, 4),
        to(20, 14),
        to(21, 4),
        to(40, 4),
        UpToHeading,
    ];
    let piece = &sound(&shaped(outline(false, &steps), seams(eighths(4)))).pieces[0];
    let corners = points(&piece.outline);
    assert_eq!(corners.len(), 7 + 1);
    let (left, right) = (corners[3], corners[4]);
    let reach = Length::from_millimetres_f64(LONGEST_POINT * 12.7).unwrap();
    assert_eq!((left.1, right.1), (inches(14) + reach, inches(14) + reach));
    assert_eq!(left.0 + right.0, inches(40));
    assert!(left.0 < right.0);
    assert_eq!(piece.outline.edges.len(), 8);
}

#[test]
fn unlike_allowances_on_edges_nearly_in_line_meet_in_a_step() {
    let mut face = seams(eighths(4));
    face.edges.sides = Allowance::DoubleHem(inches(1));
    // The side leans in by 1/4 in over the last 10 in.
    let mut steps = vec![from(0, 14), to(40, 14), to(40, 4), UpToHeading];
    steps[1] = OutlineStep::To {
        across: pelmet_model::Proportion::fixed(inches(40) - eighths(2)),
        down: pelmet_model::Proportion::fixed(inches(14)),
    };
    let piece = &sound(&shaped(outline(false, &steps), face)).pieces[0];
    let corners = points(&piece.outline);
    assert_eq!(corners[4], (inches(42), inches(4)));
    assert!((corners[3].0 - inches(40) - eighths(4)).abs() < eighths(1));
    assert!((corners[3].1 - inches(4)).abs() < eighths(1));
}

#[test]
fn places_too_narrow_for_their_allowance_are_told_once() {
    let too_narrow = |step, width, needed| OutlineMatter::TooNarrow {
        step,
        width,
        needed,
    };
    let cases = [
        // A slot 3/4 in wide has no room for two seams of 1/2 in.
        (
            outline(
                true,
                &[
                    from(0, 14),
                    to(9, 14),
                    to(9, 8),
                    slot(),
                    to(20, 14),
                    UpToHeading,
                ],
            ),
            Some(too_narrow(3, eighths(6), inches(1))),
        ),
        (
            outline(
                false,
                &[
                    from(0, 14),
                    notch((20, 14), (1, 6), true),
                    to(40, 14),
                    UpToHeading,
                ],
            ),
            Some(too_narrow(1, inches(1), inches(1))),
        ),
        // The chamber of a keyhole is wide enough, its mouth is not.
        (
            outline(
                false,
                &[
                    from(0, 14),
                    to(19, 14),
                    to(19, 10),
                    to(12, 10),
                    to(12, 4),
                    to(28, 4),
                    to(28, 10),
                    half_inch_mouth(10),
                    half_inch_mouth(14),
                    to(40, 14),
                    UpToHeading,
                ],
            ),
            Some(too_narrow(1, eighths(4), inches(1))),
        ),
    ];
    for (outline, expected) in cases {
        let mut order = shaped(outline, seams(eighths(4)));
        // The lining is as narrow in the same places; that is one mistake.
        order.lining = Some(0);
        order.making.lining = Some(seams(eighths(4)));
        let (made, matters) = alone(&order, &cloth());
        assert_eq!(made, None);
        assert_eq!(matters.len(), 1, "{matters:?}");
        if let Some(expected) = expected {
            assert_eq!(matters, [Matter::Outline(expected)]);
        }
    }
}

/// The far side of a slot 3/4 in wide that began at 9 in across.
fn slot() -> OutlineStep {
    OutlineStep::Notch {
        across: pelmet_model::Proportion::fixed(inches(10) + eighths(3)),
        down: pelmet_model::Proportion::fixed(inches(14)),
        width: pelmet_model::Proportion::fixed(eighths(6)),
        depth: pelmet_model::Proportion::fixed(inches(6)),
        square: true,
    }
}

fn half_inch_mouth(down: i64) -> OutlineStep {
    OutlineStep::To {
        across: pelmet_model::Proportion::fixed(inches(19) + eighths(4)),
        down: pelmet_model::Proportion::fixed(inches(down)),
    }
}

#[test]
fn extra_width_is_given_in_full_though_it_does_not_halve() {
    let nanometres = Length::from_nanometres;
    for (wider, left, right) in [(3, 1, 2), (-3, -2, -1)] {
        let face = LayerMaking {
            wider: nanometres(wider),
            ..seams(Length::ZERO)
        };
        let piece = &sound(&shaped(Outline::straight(inches(14)), face)).pieces[0];
        let (least, most) = piece.outline.bounds();
        let ends = (-nanometres(left), inches(40) + nanometres(right));
        assert_eq!((least.across, most.across), ends);
    }
}

#[test]
fn every_edge_of_the_cut_line_says_how_long_it_is() {
    let piece = &sound(&panel()).pieces[0];
    let lengths: Vec<Length> = piece.outline.edges.iter().map(|edge| edge.length).collect();
    assert_eq!(lengths, [15, 41, 15, 41].map(inches));
}

/// A tooth of cloth points at the far side of a slot and comes within an inch of it; nothing else
/// does. The tip lies beside the middle of that side.
#[test]
fn a_narrow_place_is_as_wide_as_the_nearest_points_of_its_edges() {
    let steps = [
        from(0, 14),
        to(15, 14),
        to(19, 9),
        to(15, 4),
        to(20, 4),
        to(20, 14),
        to(40, 14),
        UpToHeading,
    ];
    let order = shaped(outline(false, &steps), seams(eighths(6)));
    let (_, matters) = alone(&order, &cloth());
    let narrow = |step| {
        Matter::Outline(OutlineMatter::TooNarrow {
            step,
            width: inches(1),
            needed: eighths(12),
        })
    };
    assert_eq!(matters, [narrow(2)]);
}

/// The lining needs more room than the face; a place that only the lining finds too narrow is told
/// for it, though it lies turned over and another mistake was told before.
#[test]
fn a_place_too_narrow_for_the_lining_alone_is_told() {
    let steps = [
        from(0, 14),
        notch((20, 14), (1, 6), true),
        to(40, 10),
        UpToHeading,
    ];
    let mut order = shaped(outline(false, &steps), seams(eighths(1)));
    order.lining = Some(1);
    order.making.lining = Some(seams(eighths(6)));
    let shrinking = pelmet_model::Fabric {
        shrinkage: ratio(1, 50),
        ..cloth()
    };
    let window = window(inches(40), vec![order], &[0]);
    for (lining, before) in [(cloth(), 0), (shrinking, 1)] {
        let (made, matters) = made(&window, &[cloth(), lining]);
        assert_eq!(made.panels, [None]);
        assert_eq!(matters.len(), before + 1, "{matters:?}");
        let last = matters.last();
        assert!(matches!(last, Some(Matter::Outline(_))), "{matters:?}");
    }
}

#[test]
fn each_narrow_place_is_told() {
    let steps = [
        from(0, 14),
        notch((10, 14), (1, 6), true),
        notch((30, 14), (1, 4), true),
        to(40, 14),
        UpToHeading,
    ];
    let mut order = shaped(outline(false, &steps), seams(eighths(6)));
    order.lining = Some(0);
    order.making.lining = Some(seams(eighths(6)));
    let (_, matters) = alone(&order, &cloth());
    let steps: Vec<_> = matters
        .iter()
        .filter_map(|matter| match matter {
            Matter::Outline(OutlineMatter::TooNarrow { step, .. }) => Some(*step),
            _ => None,
        })
        .collect();
    assert_eq!(steps, [1, 2]);
}
