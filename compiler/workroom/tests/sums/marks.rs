//! Marks in working order, from the left edge and from the centre.

use pelmet_measure::Length;
use pelmet_model::{
    DrawnOrder, End, FastenerOrder, Heading, HeadingWork, MarkMade, Marked, Motif, PanelMade,
    PanelOrder, PleatKind, PleatOrder, PleatRule, PleatStep, Ranged, Relief, StepKind, Toward,
    WidthOrder,
};
use pelmet_workroom::{finished_at, is_hidden};

use crate::sample::{
    alone, cloth, eighths, exactly, inches, knives, made, panel, ratio, sound, window,
};

fn kinds(panel: &PanelMade) -> Vec<&'static str> {
    let kind = |mark: &MarkMade| match mark.what {
        Marked::HeadingLine => "heading line",
        Marked::HeadingWork(HeadingWork::FastenerMate) => "mate",
        Marked::HeadingWork(_) => "heading work",
        Marked::Corner { .. } => "corner",
        Marked::TurningOpening => "opening",
        Marked::Fold { .. } => "fold",
        Marked::Pair { .. } => "pair",
        Marked::Finger { .. } => "finger",
        Marked::GatherEnd { .. } => "gather end",
        Marked::Quarter => "quarter",
        Marked::MotifCentre => "motif",
        Marked::FastenerLine { .. } => "fastener",
        Marked::LowerFold => "lower fold",
        Marked::BandSeam { .. } => "band seam",
        Marked::JoinSeam => "seam",
        Marked::Return(_) => "return",
        Marked::Curve { .. } => "curve",
    };
    panel.marks.iter().map(kind).collect()
}

#[test]
fn marks_come_in_the_order_of_work() {
    let fastener = FastenerOrder {
        name: String::from("hook-and-loop"),
        width: inches(1),
        inset: Length::ZERO,
    };
    let mut order = PanelOrder {
        heading: Heading::OverRod {
            tail: inches(5),
            fastener: Some(fastener),
        },
        pleats: Some(knives(2, inches(1))),
        width: exactly(inches(80)),
        ..panel()
    };
    order.making.turning_opening = Some(inches(6));
    let mut window = window(inches(80), vec![order], &[0]);
    window.motif = Some(Motif {
        panel: 0,
        below_heading: inches(8),
    });
    let (window, _) = made(&window, &[cloth()]);
    let panel = window.panels[0].as_ref().unwrap();
    assert_eq!(
        kinds(panel),
        [
            "heading line",
            "corner",
            "corner",
            "corner",
            "corner",
            "opening",
            "opening",
            "fold",
            "fold",
            "motif",
            "fastener",
            "mate",
            "seam",
            "seam"
        ]
    );
    for mark in &panel.marks {
        assert_eq!(mark.across - mark.from_centre, inches(42), "{mark:?}");
    }
    let opening: Vec<_> = panel.marks[5..7]
        .iter()
        .map(|mark| mark.from_centre)
        .collect();
    assert_eq!(opening, [inches(-3), inches(3)]);
    assert_eq!(panel.marks[9].down, Some(panel.heading_depth + inches(8)));
}

#[test]
fn a_fold_says_where_it_lies_and_what_it_is_brought_to() {
    let made = sound(&PanelOrder {
        pleats: Some(knives(2, inches(1))),
        ..panel()
    });
    let folds: Vec<_> = made
        .marks
        .iter()
        .filter_map(|mark| match mark.what {
            Marked::Fold {
                pleat,
                brought_to,
                brought_to_from_centre,
                depth,
                toward,
                kind,
            } => Some((
                pleat,
                kind,
                mark.across,
                brought_to,
                brought_to_from_centre,
                depth,
                toward,
            )),
            _ => None,
        })
        .collect();
    // 44 in flat: 2 in plain, a knife that takes 2 in, 3 in plain, another.
    let fold = |pleat, across, brought_to: i64| {
        let to = inches(brought_to);
        (
            pleat,
            PleatKind::Knife,
            inches(across),
            to,
            to - inches(22),
            inches(1),
            Toward::Left,
        )
    };
    assert_eq!(folds, [fold(1, 4, 2), fold(2, 9, 7)]);
}

#[test]
fn corners_are_numbered_with_their_relief() {
    let made = sound(&panel());
    let corners: Vec<_> = made
        .marks
        .iter()
        .map(|mark| (&mark.what, mark.across, mark.down))
        .collect();
    let corner = |number| Marked::Corner {
        number,
        relief: Some(Relief::Trim),
        name: None,
    };
    let expected = [(1, 0, 0), (2, 0, 14), (3, 40, 14), (4, 40, 0)];
    for (mark, (number, across, down)) in corners.iter().zip(expected) {
        assert_eq!(*mark, (&corner(number), inches(across), Some(inches(down))));
    }
    assert_eq!(corners.len(), 4);
}

#[test]
fn a_gathered_panel_gets_quarter_marks() {
    let mut order = panel();
    order.width.fullness = Some(ratio(2, 1));
    let (window, _) = made(&window(inches(40), vec![order], &[0]), &[cloth()]);
    let marks = &window.panels[0].as_ref().unwrap().marks;
    let quarters: Vec<_> = marks
        .iter()
        .filter(|mark| mark.what == Marked::Quarter)
        .map(|mark| (mark.across, mark.from_centre))
        .collect();
    let at = |across| (inches(across), inches(across - 40));
    assert_eq!(quarters, [at(20), at(40), at(60)]);
}

fn of(kind: PleatKind) -> PleatOrder {
    PleatOrder::new(kind, Ranged::fixed(Length::ZERO))
}

/// A pleat of its kind with 3 in of plain cloth on either side, and the marks made for it.
fn marks_of_pleat(order: &PleatOrder, depth: Length) -> Vec<(Marked, Length)> {
    let plain = |number| PleatStep {
        number,
        kind: StepKind::Plain(Ranged::fixed(inches(3))),
    };
    let pleat = PleatStep {
        number: 1,
        kind: StepKind::Pleat(PleatOrder {
            depth: Ranged::fixed(depth),
            ..order.clone()
        }),
    };
    let rule = PleatRule {
        steps: vec![plain(0), pleat, plain(2)],
        ..knives(1, inches(1))
    };
    let order = PanelOrder {
        pleats: Some(rule),
        width: WidthOrder::default(),
        ..panel()
    };
    let (made, _) = alone(&order, &cloth());
    let of_pleat = |mark: &MarkMade| !matches!(mark.what, Marked::Corner { .. });
    let marks = made.unwrap().marks;
    let marks = marks.into_iter().filter(of_pleat);
    marks.map(|mark| (mark.what, mark.across)).collect()
}

#[test]
fn a_stitched_pleat_marks_its_two_points_and_its_fingers() {
    let kind = PleatOrder {
        fingers: 2,
        face: Some(Ranged::fixed(inches(2))),
        ..of(PleatKind::Pinch)
    };
    let pair = Marked::Pair {
        pleat: 1,
        kind: PleatKind::Pinch,
        depth: eighths(12),
        leaves: inches(2),
        other: inches(11),
        other_from_centre: inches(4),
    };
    let finger = || Marked::Finger { pleat: 1 };
    let expected = [(pair, 3), (finger(), 5), (finger(), 9)];
    let expected = expected.map(|(kind, across)| (kind, inches(across)));
    assert_eq!(marks_of_pleat(&kind, inches(6)), expected);
}

#[test]
fn a_gathered_run_marks_its_ends_and_its_quarters() {
    let kind = PleatOrder {
        drawn: DrawnOrder {
            ratio: Some(ratio(2, 1)),
            to: Some(Ranged::fixed(inches(4))),
        },
        ..of(PleatKind::Gathers)
    };
    let end = || Marked::GatherEnd {
        pleat: 1,
        kind: PleatKind::Gathers,
        drawn_to: inches(4),
    };
    let quarter = |across| (Marked::Quarter, inches(across));
    assert_eq!(
        marks_of_pleat(&kind, Length::ZERO),
        [
            (end(), inches(3)),
            quarter(5),
            quarter(7),
            quarter(9),
            (end(), inches(11)),
        ]
    );
}

/// The lines of the heading below the made-up top edge, each with what is done along it.
fn heading_work(panel: &PanelMade) -> Vec<(HeadingWork, Length)> {
    let marks = panel.marks.iter();
    let work = marks.filter_map(|mark| match mark.what {
        Marked::HeadingWork(work) => Some((work, mark.down?)),
        _ => None,
    });
    work.collect()
}

#[test]
fn a_pocket_is_stitched_through_both_of_its_sides() {
    let pocket = |above, turn| Heading::RodPocket {
        pocket: Some(inches(2)),
        ease: Length::ZERO,
        above,
        turn,
    };
    let order = PanelOrder {
        heading: pocket(inches(1), inches(1)),
        ..panel()
    };
    // Folded back 4 in deep, the lines of the back lie as far below the fold in front.
    assert_eq!(
        heading_work(&sound(&order)),
        [
            (HeadingWork::TurnUnder, inches(1)),
            (HeadingWork::UpperStitching, inches(5)),
            (HeadingWork::LowerStitching, inches(7)),
        ]
    );
    let plain = PanelOrder {
        heading: pocket(Length::ZERO, Length::ZERO),
        ..panel()
    };
    assert_eq!(
        heading_work(&sound(&plain)),
        [(HeadingWork::LowerStitching, inches(4))]
    );
}

#[test]
fn the_mate_of_a_fastener_lies_where_the_tail_ends() {
    let order = PanelOrder {
        heading: Heading::OverRod {
            tail: inches(4),
            fastener: Some(FastenerOrder {
                name: String::from("hook-and-loop"),
                width: inches(1),
                inset: Length::ZERO,
            }),
        },
        ..panel()
    };
    let made = sound(&order);
    // Hung, the tail's end lies 4 in below the rod's centre line; in front that is the same.
    let [(HeadingWork::FastenerMate, mate)] = heading_work(&made)[..] else {
        panic!("one mate: {:?}", made.marks);
    };
    let end_of_tail_in_front = mate + inches(1);
    let drop_below_it = made.made_length - end_of_tail_in_front;
    // The drop is measured from the top of the rod, which is 1 in across.
    assert_eq!(drop_below_it, inches(14) - eighths(4) - inches(4));
}

/// The flat positions at which a panel that hangs at these places of the row turns back.
fn returns(order: PanelOrder, row: &[usize], returns: Length) -> Vec<(End, Length)> {
    let mut window = window(inches(40), vec![order, panel()], row);
    window.returns = returns;
    let (window, _) = made(&window, &[cloth()]);
    let panel = window.panels.first().unwrap().as_ref().unwrap();
    let of_return = panel.marks.iter().filter_map(|mark| match mark.what {
        Marked::Return(end) => {
            assert_eq!(mark.across - mark.from_centre, panel.flat.divided(2));
            Some((end, mark.across))
        }
        _ => None,
    });
    of_return.collect()
}

#[test]
fn an_end_panel_is_marked_where_it_turns_back_to_the_wall() {
    let flat = || PanelOrder {
        width: exactly(inches(40)),
        ..panel()
    };
    let (left, right) = ((End::Left, inches(3)), (End::Right, inches(37)));
    assert_eq!(returns(flat(), &[0], inches(3)), [left, right]);
    assert_eq!(returns(flat(), &[0, 1], inches(3)), [left]);
    assert_eq!(returns(flat(), &[1, 0], inches(3)), [right]);
    assert_eq!(returns(flat(), &[0, 1, 0], inches(3)), [left, right]);
    assert_eq!(returns(flat(), &[1, 0, 1], inches(3)), []);
    assert_eq!(returns(flat(), &[0], Length::ZERO), []);
    assert_eq!(
        returns(flat(), &[0], inches(40)),
        [],
        "it would be all return"
    );
}

/// Each of the two knives lies over the cloth beside it, so that two or three layers lie at some
/// finished positions; the mark is on the one in front.
#[test]
fn the_return_is_marked_on_the_cloth_that_is_seen_there() {
    let order = || PanelOrder {
        pleats: Some(knives(2, inches(2))),
        width: exactly(inches(40)),
        ..panel()
    };
    let (window, _) = made(&window(inches(40), vec![order()], &[0]), &[cloth()]);
    let panel = window.panels[0].as_ref().unwrap();
    for at in (1..20).map(inches) {
        let ends = returns(order(), &[0], at);
        assert_eq!(ends.len(), 2, "{at:?}");
        for (end, flat) in ends {
            let finished = match end {
                End::Left => at,
                End::Right => panel.finished - at,
            };
            let lies = panel.folding.stretches.iter().filter(|stretch| {
                (stretch.flat_from..=stretch.flat_to).contains(&flat)
                    && finished_at(stretch, flat) == finished
            });
            assert_ne!(lies.count(), 0, "{end:?} {at:?}");
            assert!(!is_hidden(&panel.folding, flat), "{end:?} {at:?}");
        }
    }
}

/// Gathered to half its width, a return of 3 in takes 6 in of it.
#[test]
fn the_return_of_a_gathered_panel_is_drawn_up_with_it() {
    let order = PanelOrder {
        width: WidthOrder {
            fullness: Some(ratio(2, 1)),
            ..exactly(inches(40))
        },
        ..panel()
    };
    let ends = [(End::Left, inches(6)), (End::Right, inches(74))];
    assert_eq!(returns(order, &[0], inches(3)), ends);
}
