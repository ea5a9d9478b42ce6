//! Tape, turning opening and fasteners.

use pelmet_measure::Length;
use pelmet_model::PanelMeasure;
use pelmet_model::{
    EdgeKind, FastenerOrder, FastenerRun, Heading, Matter, OutlineStep, PanelOrder, PieceMatter,
    TapeOrder,
};

use crate::sample::{
    alone, cloth, eighths, from, inches, knives, notch, outline, panel, sound, to,
};

fn taped(top: bool, sides: bool, lower: bool) -> PanelOrder {
    let mut order = panel();
    order.making.tape = Some(TapeOrder {
        width: eighths(3),
        top,
        sides,
        lower,
        roll: None,
    });
    order.making.turning_opening = Some(inches(5));
    order
}

/// Common practice, no source: every straight run is one length, cut at the corners.
#[test]
fn each_straight_run_is_one_length_of_tape() {
    let steps = [
        from(0, 14),
        notch((20, 14), (4, 3), true),
        to(40, 14),
        OutlineStep::UpToHeading,
    ];
    let order = PanelOrder {
        outline: outline(false, &steps),
        ..taped(true, true, true)
    };
    let runs = sound(&order).tape;
    let lengths: Vec<_> = runs.iter().map(|run| run.length).collect();
    // The opening of 5 in is left out of the top run.
    assert_eq!(lengths, [14, 18, 3, 4, 3, 18, 14, 35].map(inches));
    assert_eq!(
        (runs[0].from.down, runs[0].to.down),
        (Length::ZERO, inches(14))
    );
}

#[test]
fn only_taped_edges_are_taped() {
    for (top, sides, lower, expected) in [
        (true, false, false, vec![EdgeKind::Top]),
        (false, true, false, vec![EdgeKind::Side, EdgeKind::Side]),
        (false, false, true, vec![EdgeKind::Lower]),
        (false, false, false, vec![]),
    ] {
        let runs = sound(&taped(top, sides, lower)).tape;
        let kinds: Vec<_> = runs.iter().map(|run| run.kind).collect();
        assert_eq!(kinds, expected);
    }
    assert_eq!(sound(&panel()).tape, []);
}

#[test]
fn a_turning_opening_must_fit_the_top_edge() {
    for (opening, fits) in [(39, true), (40, false), (41, false)] {
        let mut order = panel();
        order.making.turning_opening = Some(inches(opening));
        let (_, matters) = alone(&order, &cloth());
        let too_wide = PieceMatter::OpeningTooWide {
            opening: inches(opening),
            edge: inches(40),
        };
        let expected = if fits {
            vec![]
        } else {
            vec![Matter::Piece(too_wide)]
        };
        assert_eq!(matters, expected);
    }
}

#[test]
fn a_fastener_runs_along_the_finished_width_clear_of_both_sides() {
    let fastened = |inset| {
        let fastener = FastenerOrder {
            name: String::from("hook-and-loop"),
            width: inches(1),
            inset,
        };
        Heading::OverRod {
            tail: inches(5),
            fastener: Some(fastener),
        }
    };
    let mut order = panel();
    order.heading = fastened(eighths(4));
    order.pleats = Some(knives(4, inches(1)));
    let made = sound(&order);
    let run = FastenerRun {
        name: String::from("hook-and-loop"),
        width: inches(1),
        length: inches(39),
        down: Length::ZERO,
    };
    assert_eq!((made.flat, made.fasteners), (inches(48), vec![run]));
    order.heading = fastened(inches(20));
    let (made, matters) = alone(&order, &cloth());
    assert_eq!(made.unwrap().fasteners, []);
    let nothing = PieceMatter::NothingLeft {
        size: PanelMeasure::FastenerLength,
        length: Length::ZERO,
    };
    assert_eq!(matters, [Matter::Piece(nothing)]);
}
