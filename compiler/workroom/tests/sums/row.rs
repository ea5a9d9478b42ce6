//! The row: coverage, filling panels, panels over the joins.

use pelmet_measure::Length;
use pelmet_model::{
    FinishedOrder, Matter, PanelOrder, RowMatter, Subject, SupportOrder, THIN_COVER, WidthOrder,
    WindowMade, WindowOrder,
};
use pelmet_workroom::work;

use crate::sample::{cloth, eighths, exactly, filling, inches, made, panel, rod, window};

fn wide(width: i64) -> PanelOrder {
    PanelOrder {
        width: exactly(inches(width)),
        ..panel()
    }
}

fn fill(least: Option<i64>, most: Option<i64>) -> PanelOrder {
    PanelOrder {
        width: filling(least.map(inches), most.map(inches)),
        ..panel()
    }
}

fn hung(order: &WindowOrder) -> (WindowMade, Vec<Matter>) {
    made(order, &[cloth()])
}

fn finished(window: &WindowMade) -> Vec<Option<Length>> {
    window
        .panels
        .iter()
        .map(|panel| Some(panel.as_ref()?.finished))
        .collect()
}

fn row_matters(matters: &[RowMatter]) -> Vec<Matter> {
    matters.iter().cloned().map(Matter::Row).collect()
}

#[test]
fn the_row_is_added_up_against_rod_and_returns() {
    for (rod, returns, overlap, widths, row, uncovered) in [
        (40, 0, 0, &[40][..], &[0][..], 0),
        (60, 0, 0, &[20, 40], &[0, 1], 0),
        (60, 3, 0, &[20, 13], &[0, 1, 1, 0], 0),
        (60, 0, 2, &[20, 24], &[0, 1, 0], 0),
        (60, 0, 0, &[20, 35], &[0, 1], 5),
        (60, 0, 0, &[20, 45], &[0, 1], -5),
        (60, 0, 3, &[20, 40], &[0, 1], 3),
        (60, 2, 0, &[20, 40], &[0, 1], 4),
    ] {
        let panels = widths.iter().map(|&width| wide(width)).collect();
        let mut order = window(inches(rod), panels, row);
        (order.returns, order.overlap) = (inches(returns), inches(overlap));
        let (made, matters) = hung(&order);
        let (to_cover, covered) = (
            inches(rod + 2 * returns),
            inches(rod + 2 * returns - uncovered),
        );
        assert_eq!(
            (made.to_cover, made.covered),
            (to_cover, covered),
            "{widths:?}"
        );
        let amount = inches(uncovered.abs());
        let expected = match uncovered {
            0 => vec![],
            1.. => vec![RowMatter::Uncovered {
                amount,
                to_cover,
                covered,
            }],
            _ => vec![RowMatter::Crowded {
                amount,
                to_cover,
                covered,
            }],
        };
        assert_eq!(matters, row_matters(&expected));
    }
}

#[test]
fn joins_lie_in_the_middle_of_overlaps() {
    let mut order = window(inches(60), vec![wide(20), wide(24)], &[0, 1, 0]);
    order.overlap = inches(2);
    let (made, _) = hung(&order);
    assert_eq!(made.joins, [inches(19), inches(41)]);
}

#[test]
fn filling_panels_share_what_is_left() {
    for (panels, row, expected) in [
        (vec![fill(None, None)], vec![0], vec![60]),
        (
            vec![wide(18), fill(None, None)],
            vec![0, 1, 0],
            vec![18, 24],
        ),
        (
            vec![wide(18), fill(Some(10), Some(20))],
            vec![0, 1, 1, 0],
            vec![18, 12],
        ),
        // The first stops at its limit, the second takes the rest.
        (
            vec![fill(None, Some(20)), fill(None, None)],
            vec![0, 1],
            vec![20, 40],
        ),
        (
            vec![fill(Some(40), None), fill(None, None)],
            vec![0, 1, 1],
            vec![40, 10],
        ),
        (
            vec![fill(Some(30), Some(30)), fill(None, None)],
            vec![0, 1],
            vec![30, 30],
        ),
    ] {
        let (made, matters) = hung(&window(inches(60), panels, &row));
        assert_eq!(matters, []);
        let expected: Vec<_> = expected
            .into_iter()
            .map(|width| Some(inches(width)))
            .collect();
        assert_eq!(finished(&made), expected);
    }
}

#[test]
fn overlaps_and_returns_are_filled_too() {
    let mut order = window(inches(60), vec![wide(20), fill(None, None)], &[0, 1, 0]);
    (order.overlap, order.returns) = (inches(1), inches(3));
    let (made, matters) = hung(&order);
    assert_eq!(matters, []);
    assert_eq!(finished(&made)[1], Some(inches(28)));
}

#[test]
fn nanometres_that_do_not_divide_count_as_covered() {
    let (made, matters) = hung(&window(inches(40), vec![fill(None, None)], &[0; 7]));
    assert_eq!(matters, []);
    assert_eq!(made.covered, inches(40));
    assert_eq!(finished(&made), [Some(inches(40).divided(7))]);
}

#[test]
fn a_share_outside_the_limits_is_the_only_report() {
    for (panels, row, panel, share, limit, taken) in [
        (vec![fill(Some(20), None)], vec![0, 0, 0, 0], 0, 15, 20, 0),
        (vec![fill(None, Some(20))], vec![0, 0], 0, 30, 20, 0),
        (
            vec![wide(50), fill(Some(6), Some(8))],
            vec![0, 1, 1],
            1,
            5,
            6,
            50,
        ),
        (vec![wide(60), fill(None, None)], vec![0, 1], 1, 0, 0, 60),
        (vec![wide(70), fill(None, None)], vec![0, 1], 1, -10, 0, 70),
    ] {
        let (made, matters) = hung(&window(inches(60), panels, &row));
        let (share, limit, taken) = (inches(share), inches(limit), inches(taken));
        let to_cover = inches(60);
        let matter = RowMatter::FillOutOfRange {
            panel,
            share,
            limit,
            taken,
            to_cover,
        };
        assert_eq!(matters, row_matters(&[matter]));
        assert_eq!(made.panels[panel], None);
    }
}

#[test]
fn a_panel_without_a_width_makes_the_row_silent() {
    let unknown = PanelOrder {
        width: WidthOrder::default(),
        ..panel()
    };
    let (made, matters) = hung(&window(
        inches(60),
        vec![unknown, fill(None, None)],
        &[0, 1],
    ));
    assert_eq!(matters.len(), 1);
    assert_eq!(finished(&made), [None, None]);
}

#[test]
fn panels_over_joins_take_no_length_and_are_made_for_each() {
    let mut order = window(inches(60), vec![wide(20), wide(10)], &[0, 0, 0]);
    order.over_joins = vec![1];
    let (made, matters) = hung(&order);
    assert_eq!(matters, []);
    let quantities: Vec<_> = made
        .panels
        .iter()
        .flatten()
        .map(|panel| panel.quantity)
        .collect();
    assert_eq!(quantities, [3, 2]);
    assert_eq!(made.panels[1].as_ref().unwrap().pieces[0].quantity, 2);
}

#[test]
fn a_join_is_covered_by_half_of_what_the_overlap_leaves() {
    for (width, overlap, margin, expected) in [
        (eighths(80), 0, Some(inches(5)), None),
        (eighths(80), 2, Some(inches(4)), None),
        (eighths(80), 0, None, None),
        (
            eighths(80),
            3,
            Some(inches(4)),
            Some((eighths(28), inches(4))),
        ),
        (eighths(8), 2, None, Some((-eighths(4), Length::ZERO))),
    ] {
        let over = PanelOrder {
            width: exactly(width),
            covers: margin,
            ..panel()
        };
        let mut order = window(
            inches(60),
            vec![wide(30 + overlap), wide(30), over],
            &[0, 1],
        );
        (order.over_joins, order.overlap) = (vec![2], inches(overlap));
        let expected = expected.map(|(covers, wanted)| RowMatter::JoinNotCovered {
            panel: 2,
            covers,
            wanted,
            finished: width,
        });
        assert_eq!(hung(&order).1, row_matters(expected.as_slice()));
    }
}

#[test]
fn a_cover_without_a_stated_margin_may_be_thin() {
    for (width, thin) in [(THIN_COVER * 2, false), (THIN_COVER * 2 - eighths(1), true)] {
        let over = PanelOrder {
            width: exactly(width),
            ..panel()
        };
        let mut order = window(inches(60), vec![wide(30), over], &[0, 0]);
        order.over_joins = vec![1];
        let matter = RowMatter::JoinThinlyCovered {
            panel: 1,
            covers: width.divided(2),
            finished: width,
        };
        let expected = if thin { vec![matter] } else { vec![] };
        assert_eq!(hung(&order).1, row_matters(&expected));
    }
}

#[test]
fn what_does_not_hang_is_told() {
    let two = || vec![wide(60), wide(10)];
    let filling = || vec![wide(60), fill(None, None)];
    for (panels, row, over_joins, expected) in [
        (two(), &[][..], &[][..], vec![RowMatter::Empty]),
        (two(), &[0], &[], vec![RowMatter::NotHung { panel: 1 }]),
        (two(), &[0], &[1], vec![RowMatter::NoJoin { panel: 1 }]),
        (
            filling(),
            &[0],
            &[],
            vec![RowMatter::FillOutsideRow { panel: 1 }],
        ),
        (
            filling(),
            &[0],
            &[1],
            vec![RowMatter::FillOutsideRow { panel: 1 }],
        ),
    ] {
        let mut order = window(inches(60), panels, row);
        order.over_joins = over_joins.to_vec();
        assert_eq!(
            hung(&order).1,
            row_matters(&expected),
            "{row:?} {over_joins:?}"
        );
    }
}

#[test]
fn the_row_is_held_to_overlap_projection_and_height() {
    let mut order = window(inches(60), vec![wide(58), wide(4)], &[0, 1]);
    order.overlap = inches(4);
    order.panels[0].width = exactly(inches(60));
    order.returns = inches(3);
    order.panels[0].width = exactly(inches(66));
    order.support = SupportOrder::Rod(pelmet_model::Rod {
        projection: Some(inches(4)),
        ..rod(inches(60))
    });
    order.top_at = Some(inches(10));
    let expected = [
        RowMatter::ReturnAndProjectionDiffer {
            returns: inches(3),
            projection: inches(4),
        },
        RowMatter::LongerThanHeight {
            panel: 0,
            drop: inches(14),
            height: inches(10),
        },
        RowMatter::LongerThanHeight {
            panel: 1,
            drop: inches(14),
            height: inches(10),
        },
        RowMatter::OverlapTooWide {
            panel: 1,
            finished: inches(4),
            overlap: inches(4),
        },
    ];
    assert_eq!(hung(&order).1, row_matters(&expected));
}

#[test]
fn every_window_and_panel_is_named_and_every_mistake_told() {
    let sound = window(inches(40), vec![panel()], &[0]);
    let mut faulty = window(inches(60), vec![wide(20), panel(), panel()], &[0, 1, 2]);
    faulty.panels[1].width = WidthOrder::default();
    faulty.panels[2].lining = Some(0);
    faulty.panels[2].width.finished = Some(FinishedOrder::Exact(Length::ZERO));
    let job = pelmet_model::Job {
        fabrics: vec![cloth()],
        windows: vec![sound, faulty],
        ..Default::default()
    };
    let (work, findings) = work(&job);
    assert!(work.windows[0].panels[0].is_some());
    let made: Vec<bool> = work.windows[1].panels.iter().map(Option::is_some).collect();
    assert_eq!(made, [true, false, false]);
    let subjects: Vec<_> = findings.iter().map(|finding| finding.subject).collect();
    let panel = |panel| Subject::Panel { window: 1, panel };
    assert_eq!(subjects, [panel(1), panel(2), panel(2)]);
}

/// One panel with a mistake in each part of the sums: none of them hides another.
#[test]
fn one_mistake_does_not_hide_another() {
    let steps = [
        crate::sample::from(0, 14),
        crate::sample::notch((20, 14), (1, 6), true),
        crate::sample::to(40, 14),
        pelmet_model::OutlineStep::UpToHeading,
    ];
    let mut order = panel();
    order.outline = crate::sample::outline(false, &steps);
    order.lining = Some(0);
    order.making.turning_opening = Some(inches(50));
    order.heading = pelmet_model::Heading::RodPocket {
        pocket: Some(inches(1)),
        ease: Length::ZERO,
        above: Length::ZERO,
        turn: Length::ZERO,
    };
    let mut order = window(inches(50), vec![order], &[0]);
    order.motif = Some(pelmet_model::Motif {
        panel: 0,
        below_heading: inches(20),
    });
    let (_, matters) = hung(&order);
    let kinds: Vec<_> = matters.iter().map(|matter| format!("{matter:?}")).collect();
    let expected = [
        "Row(Uncovered",
        "Making(LayerMismatch",
        "Piece(PocketTooSmall",
        "Piece(OpeningTooWide",
        "Piece(MotifBelowDrop",
        "Outline(TooNarrow",
    ];
    assert_eq!(kinds.len(), expected.len(), "{kinds:?}");
    for (kind, expected) in kinds.iter().zip(expected) {
        assert!(kind.starts_with(expected), "{kind} is not {expected}");
    }
}

#[test]
fn numbers_of_panels_and_cloths_that_do_not_exist_do_no_harm() {
    let mut order = window(inches(60), vec![wide(60)], &[0, 7]);
    order.over_joins = vec![9];
    order.panels[0].face = 5;
    order.panels[0].lining = Some(6);
    let (made, _) = hung(&order);
    assert_eq!(made.panels, [None]);
}

#[test]
fn a_row_may_just_fit_its_height_and_a_panel_alone_overlaps_nothing() {
    let mut order = window(inches(40), vec![wide(40)], &[0]);
    order.top_at = Some(inches(14));
    order.overlap = inches(50);
    assert_eq!(hung(&order).1, []);
    order.top_at = Some(inches(13));
    assert_eq!(hung(&order).1.len(), 1);
}
