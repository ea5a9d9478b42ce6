//! What must hold whatever is ordered.

use pelmet_measure::{Area, Length};
use pelmet_model::{
    EdgeKind, FinishedOrder, Heading, Matter, Outline, OutlineStep, PanelOrder, Proportion, Shape,
};
use pelmet_workroom::{has_like_halves, work};
use proptest::prelude::*;

use crate::sample::{alone, cloth, exactly, filling, made, outline, panel, ratio, seams, window};

fn nanometres(range: std::ops::Range<i64>) -> impl Strategy<Value = Length> {
    range.prop_map(Length::from_nanometres)
}

/// From a millimetre to some metres.
fn sizes() -> impl Strategy<Value = Length> {
    nanometres(1_000_000..5_000_000_000)
}

/// A half outline of level treads and slants, all within the size.
fn half_outlines() -> impl Strategy<Value = Outline> {
    let downs = prop::collection::vec(1..=100_i128, 2..8);
    downs.prop_map(|downs| {
        let count = i128::try_from(downs.len()).unwrap() - 1;
        let drop = |percent| Length::millimetres(400).scaled(ratio(percent, 100));
        let mut points = downs.iter().enumerate().map(|(index, percent)| {
            let part = ratio(i128::try_from(index).unwrap(), count);
            (
                Proportion {
                    part,
                    plus: Length::ZERO,
                },
                Proportion::fixed(drop(*percent)),
            )
        });
        let (across, down) = points.next().unwrap();
        let mut steps = vec![OutlineStep::From { across, down }];
        steps.extend(points.map(|(across, down)| OutlineStep::To { across, down }));
        steps.push(OutlineStep::UpToHeading);
        outline(true, &steps)
    })
}

fn shaped(outline: Outline, width: Length, allowance: Length) -> PanelOrder {
    let mut order = PanelOrder {
        outline,
        width: exactly(width),
        drop: Length::millimetres(400),
        ..panel()
    };
    order.making.face = seams(allowance);
    order
}

/// Wide cloth, so that nothing is joined.
fn wide_cloth() -> pelmet_model::Fabric {
    pelmet_model::Fabric {
        width: Length::METRE * 100,
        ..cloth()
    }
}

fn contains(outer: &Shape, inner: &Shape) -> bool {
    let ((left, right), (inner_left, inner_right)) = (outer.bounds(), inner.bounds());
    left.across <= inner_left.across
        && left.down <= inner_left.down
        && right.across >= inner_right.across
        && right.down >= inner_right.down
}

proptest! {
    /// Were the way round mistaken, an allowance would make the piece smaller.
    #[test]
    fn an_allowance_only_adds(
        outline in half_outlines(), width in sizes(), allowance in nanometres(0..8_000_000),
    ) {
        let (made, _) = alone(&shaped(outline, width, allowance), &wide_cloth());
        if let Some(made) = made {
            let piece = &made.pieces[0];
            prop_assert!(piece.area >= made.shape.area());
            prop_assert!(contains(&piece.outline, &made.shape));
            // The edges leave each corner as they are, so the gain is near length times allowance.
            let around: Length = made.shape.edges.iter().map(|edge| edge.length).sum();
            let rounded = allowance + Length::from_nanometres(1);
            let most = Area::of(around + allowance * 40, rounded);
            prop_assert!(piece.area - made.shape.area() <= most);
        }
    }

    #[test]
    fn a_rectangle_grows_exactly(
        width in sizes(), drop in sizes(), top in sizes(), sides in sizes(), lower in sizes(),
    ) {
        let mut order = shaped(Outline::straight(drop), width, Length::ZERO);
        order.drop = drop;
        let edges = &mut order.making.face.edges;
        edges.top = pelmet_model::Allowance::Seam(top);
        edges.sides = pelmet_model::Allowance::Seam(sides);
        edges.lower = pelmet_model::Allowance::Seam(lower);
        let piece = alone(&order, &wide_cloth()).0.unwrap().pieces.remove(0);
        prop_assert_eq!(piece.cut_width, width + sides * 2);
        prop_assert_eq!(piece.cut_length, drop + top + lower);
        prop_assert_eq!(piece.area, Area::of(piece.cut_width, piece.cut_length));
    }

    #[test]
    fn a_half_outline_is_mirrored_exactly(outline in half_outlines(), width in sizes()) {
        let (made, _) = alone(&shaped(outline, width, Length::ZERO), &wide_cloth());
        if let Some(made) = made {
            prop_assert!(has_like_halves(&made.shape));
            prop_assert!(has_like_halves(&made.pieces[0].outline));
            prop_assert_eq!(made.shape.bounds().1.across, width);
            let tops = made.shape.edges.iter().filter(|edge| edge.kind == EdgeKind::Top);
            prop_assert_eq!(tops.map(|edge| edge.length).collect::<Vec<_>>(), vec![width]);
        }
    }

    #[test]
    fn a_filled_row_always_covers(
        length in sizes(),
        fixed in prop::collection::vec(nanometres(1_000_000..2_000_000_000), 1..4),
        overlap in nanometres(0..50_000_000),
        returns in nanometres(0..100_000_000),
        row in prop::collection::vec(0..5_usize, 1..9),
        most in prop::option::of(sizes()),
    ) {
        let mut panels: Vec<PanelOrder> =
            fixed.iter().map(|&width| PanelOrder { width: exactly(width), ..panel() }).collect();
        let fillers = [filling(None, most), filling(None, None)];
        panels.extend(fillers.map(|width| PanelOrder { width, ..panel() }));
        let count = panels.len();
        let row: Vec<usize> = row.into_iter().map(|panel| panel % count).collect();
        let mut order = window(length, panels, &row);
        (order.overlap, order.returns) = (overlap, returns);
        let (made, matters) = made(&order, &[wide_cloth()]);
        let last_fills = row.contains(&(count - 1));
        let unfilled = matters.iter().any(|matter| matches!(matter, Matter::Row(
            pelmet_model::RowMatter::FillOutOfRange { .. }
        )));
        if last_fills && !unfilled {
            prop_assert_eq!(made.covered, length + returns * 2);
            let width = |panel: usize| Some(made.panels[panel].as_ref()?.finished);
            // A panel may come out too small for its own seams; then it is not there to add up.
            let widths: Option<Vec<Length>> = row.iter().map(|&panel| width(panel)).collect();
            if let Some(widths) = widths {
                let joins = i64::try_from(row.len()).unwrap() - 1;
                let sum = widths.into_iter().sum::<Length>() - overlap * joins;
                let left_over = made.covered - sum;
                prop_assert!(left_over >= Length::ZERO);
                prop_assert!(left_over < Length::from_nanometres(joins + 2));
            }
        }
    }

    #[test]
    fn strips_make_up_the_cut_width_exactly(
        width in nanometres(100_000_000..40_000_000_000),
        usable in nanometres(400_000_000..3_000_000_000),
        join in nanometres(0..20_000_000),
        allowance in nanometres(0..40_000_000),
    ) {
        let narrow = pelmet_model::Fabric { width: usable, selvage: Length::ZERO, ..cloth() };
        let mut order = shaped(Outline::straight(Length::millimetres(400)), width, allowance);
        order.making.join = join;
        let piece = alone(&order, &narrow).0.unwrap().pieces.remove(0);
        prop_assert_eq!(piece.cut_width, width + allowance * 2);
        let Some(joined) = piece.joined else {
            prop_assert!(piece.cut_width <= usable);
            return Ok(());
        };
        let cut: Length = joined.strips.iter().map(|strip| strip.cut_width).sum();
        let joins = i64::try_from(joined.seams.len()).unwrap();
        prop_assert_eq!(cut - join * 2 * joins, piece.cut_width);
        prop_assert_eq!(joined.strips.len(), joined.seams.len() + 1);
        prop_assert!(joined.strips.len() % 2 == 1);
        prop_assert!(joined.strips.iter().all(|strip| strip.cut_width <= usable));
        let (first, last) = (joined.strips[0], joined.strips[joined.strips.len() - 1]);
        prop_assert!((last.cut_width - first.cut_width).abs() <= Length::from_nanometres(1));
    }

    #[test]
    fn no_order_panics(
        sizes in prop::collection::vec(any::<i64>(), 12),
        steps in prop::collection::vec((0..5_u8, any::<i64>(), any::<i64>(), any::<i32>()), 0..8),
        half: bool,
    ) {
        let length = |index: usize| Length::from_nanometres(sizes[index]);
        let steps = steps.into_iter().map(|(kind, one, other, part)| {
            let across =
                Proportion { part: ratio(part.into(), 1_000), plus: Length::from_nanometres(one) };
            let down = Proportion::fixed(Length::from_nanometres(other));
            match kind {
                0 => OutlineStep::From { across, down },
                1 => OutlineStep::To { across, down },
                2 => OutlineStep::By { across, down },
                3 => OutlineStep::UpToHeading,
                _ => OutlineStep::Notch { across, down, width: down, depth: across, square: half },
            }
        });
        let mut order = shaped(outline(half, &steps.collect::<Vec<_>>()), length(0), length(1));
        order.width.flat = Some(length(2));
        order.width.fullness = Some(ratio(sizes[3].into(), 7));
        order.drop = length(4);
        order.heading = Heading::OverRod { tail: length(5), fastener: None };
        order.making.join = length(6);
        let mut other = panel();
        other.width.finished =
            Some(FinishedOrder::Fill { least: Some(length(7)), most: Some(length(8)) });
        let mut window = window(length(9), vec![order, other], &[0, 1, 1]);
        (window.overlap, window.returns) = (length(10), length(11));
        window.over_joins = vec![0];
        let job = pelmet_model::Job { fabrics: vec![cloth()], windows: vec![window], ..Default::default() };
        let (made, _) = work(&job);
        prop_assert_eq!(made.windows.len(), 1);
    }
}
