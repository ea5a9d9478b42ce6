//! Flat, finished and cut width, fullness: any one gives the others, two must agree.

use pelmet_measure::Length;
use pelmet_model::PanelMeasure;
use pelmet_model::{Allowance, Matter, PieceMatter, PleatMatter, WidthOrder};
use pelmet_workroom::fullness_of;

use crate::sample::{
    alone, cloth, eighths, exactly, filling, inches, knives, made, panel, ratio, sound, window,
};

fn widths(order: WidthOrder) -> (Option<(Length, Length)>, Vec<Matter>) {
    let mut panel = panel();
    panel.width = order;
    let (made, mut matters) = alone(&panel, &cloth());
    matters.retain(|matter| !matches!(matter, Matter::Row(_)));
    (made.map(|made| (made.finished, made.flat)), matters)
}

#[test]
fn any_one_width_gives_the_rest() {
    let flat = |flat| WidthOrder {
        flat: Some(flat),
        ..WidthOrder::default()
    };
    let cut = |cut| WidthOrder {
        cut: Some(cut),
        ..WidthOrder::default()
    };
    let full = |order: WidthOrder| WidthOrder {
        fullness: Some(ratio(5, 2)),
        ..order
    };
    for (order, finished, flat) in [
        (exactly(inches(40)), 40, 40),
        (flat(inches(40)), 40, 40),
        (cut(inches(41)), 40, 40),
        (full(exactly(inches(40))), 40, 100),
        (full(flat(inches(100))), 40, 100),
        (full(cut(inches(101))), 40, 100),
        (
            WidthOrder {
                flat: Some(inches(40)),
                ..exactly(inches(40))
            },
            40,
            40,
        ),
        (
            WidthOrder {
                cut: Some(inches(41)),
                ..exactly(inches(40))
            },
            40,
            40,
        ),
        (
            full(WidthOrder {
                flat: Some(inches(100)),
                ..exactly(inches(40))
            }),
            40,
            100,
        ),
    ] {
        assert_eq!(
            widths(order),
            (Some((inches(finished), inches(flat))), vec![]),
            "{order:?}"
        );
    }
}

#[test]
fn widths_that_disagree_are_reported_once() {
    let disagree = |first, first_length, second, second_length| {
        let (first_length, second_length) = (inches(first_length), inches(second_length));
        PieceMatter::WidthsDisagree {
            first,
            first_length,
            second,
            second_length,
        }
    };
    let (by_cut, by_fullness) = (
        PanelMeasure::FlatWidthByCut,
        PanelMeasure::FlatWidthByFullness,
    );
    let order = exactly(inches(40));
    for (order, matter) in [
        (
            WidthOrder {
                flat: Some(inches(42)),
                ..order
            },
            disagree(PanelMeasure::FlatWidth, 42, PanelMeasure::FinishedWidth, 40),
        ),
        (
            WidthOrder {
                flat: Some(inches(40)),
                cut: Some(inches(44)),
                ..order
            },
            disagree(PanelMeasure::FlatWidth, 40, by_cut, 43),
        ),
        (
            WidthOrder {
                flat: Some(inches(90)),
                fullness: Some(ratio(2, 1)),
                ..order
            },
            disagree(PanelMeasure::FlatWidth, 90, by_fullness, 80),
        ),
    ] {
        assert_eq!(
            widths(order),
            (None, vec![Matter::Piece(matter)]),
            "{order:?}"
        );
    }
}

#[test]
fn a_width_that_cannot_be_is_reported_once() {
    let order = exactly(inches(40));
    for (order, matter) in [
        (WidthOrder::default(), PieceMatter::NoWidth),
        (
            WidthOrder {
                fullness: Some(ratio(1, 2)),
                ..order
            },
            PieceMatter::FullnessUnderOne {
                fullness: ratio(1, 2),
            },
        ),
        (
            exactly(inches(-3)),
            PieceMatter::NothingLeft {
                size: PanelMeasure::FinishedWidth,
                length: inches(-3),
            },
        ),
        (
            WidthOrder {
                cut: Some(inches(1)),
                ..WidthOrder::default()
            },
            PieceMatter::NothingLeft {
                size: PanelMeasure::FinishedWidth,
                length: Length::ZERO,
            },
        ),
        (
            WidthOrder {
                fullness: Some(ratio(i128::MAX, 3)),
                ..order
            },
            PieceMatter::TooLarge {
                size: PanelMeasure::FlatWidth,
            },
        ),
    ] {
        assert_eq!(
            widths(order),
            (None, vec![Matter::Piece(matter)]),
            "{order:?}"
        );
    }
}

#[test]
fn a_cut_width_counts_hems_extra_width_and_shrinkage() {
    let mut order = panel();
    order.making.face.edges.sides = Allowance::SingleHem {
        depth: inches(1),
        turn: eighths(4),
    };
    order.making.face.wider = inches(1);
    order.width = WidthOrder {
        cut: Some(inches(50)),
        ..WidthOrder::default()
    };
    let mut shrinking = cloth();
    shrinking.shrinkage = ratio(1, 10);
    // 50 in shrink to 45 in; two hems of 1 1/2 in and the inch of extra width leave 41 in.
    let (made, _) = alone(&order, &shrinking);
    let made = made.unwrap();
    assert_eq!(
        (made.flat, made.pieces[0].cut_width),
        (inches(41), inches(50))
    );
}

#[test]
fn a_pleated_panel_takes_the_width_its_rule_leaves_open() {
    let mut order = panel();
    order.pleats = Some(knives(4, inches(1)));
    let made = sound(&order);
    assert_eq!((made.finished, made.flat), (inches(40), inches(48)));
    order.width = WidthOrder::default();
    let (made, matters) = alone(&order, &cloth());
    assert_eq!(
        (made, matters),
        (None, vec![Matter::Pleats(PleatMatter::WidthMissing)])
    );
}

/// UFGS 12 22 00: 200 %, 250 % and 300 % fullness mean twice, two and a half times and three times
/// the width, on the length of the rod plus overlaps and returns.
#[test]
fn fullness_is_reckoned_on_rod_overlaps_and_returns() {
    for (percent, flat) in [(200, 172), (250, 215), (300, 258)] {
        let mut order = panel();
        order.width = filling(None, None);
        order.width.fullness = Some(ratio(percent, 100));
        let mut pair = window(inches(76), vec![order], &[0, 0]);
        pair.overlap = inches(4);
        pair.returns = inches(3);
        let (window, matters) = made(&pair, &[cloth()]);
        let made = window.panels[0].clone().unwrap();
        assert_eq!(matters, []);
        // 76 in of rod, 4 in of overlap and 3 in at each end: 86 in.
        assert_eq!(made.finished * 2, inches(86));
        assert_eq!(made.flat * 2, inches(flat));
        assert_eq!(
            fullness_of(made.finished, made.flat),
            Some(ratio(percent, 100))
        );
    }
    assert_eq!(fullness_of(Length::ZERO, inches(3)), None);
}

#[test]
fn the_ends_of_what_may_be_asked_for_are_allowed() {
    let flat_as_it_hangs = WidthOrder {
        fullness: Some(ratio(1, 1)),
        ..exactly(inches(40))
    };
    assert_eq!(
        widths(flat_as_it_hangs),
        (Some((inches(40), inches(40))), vec![])
    );
    let size = PanelMeasure::FinishedWidth;
    let (_, largest) = widths(exactly(Length::LARGEST));
    assert!(!largest.contains(&PieceMatter::TooLarge { size }.into()));
    let (_, larger) = widths(exactly(Length::LARGEST + Length::from_nanometres(1)));
    assert_eq!(larger, [PieceMatter::TooLarge { size }.into()]);
}
