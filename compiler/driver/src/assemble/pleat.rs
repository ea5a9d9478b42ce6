//! Pleats, creases, stretches and layers.

use pelmet_measure::Length;
use pelmet_model::{CreaseMade, Folding, LayerRun, Lies, PleatMade, StretchMade};
use pelmet_packet::{Crease, Layers, Pleat, Seen, Stretch, TurnOfCloth};

use super::count::{number, ordinal};
use super::printer::Printer;

pub(crate) fn pleats(made: &[PleatMade], printer: &Printer<'_>) -> Vec<Pleat> {
    made.iter()
        .enumerate()
        .map(|(index, pleat)| Pleat {
            number: ordinal(index),
            kind: pleat.kind,
            depth: printer.mark(pleat.depth),
            face: pleat.face.map(|face| printer.mark(face)),
            take_up: printer.mark(pleat.take_up),
            flat: printer.run(pleat.from, pleat.to),
        })
        .collect()
}

pub(crate) fn creases(made: &[CreaseMade], printer: &Printer<'_>) -> Vec<Crease> {
    made.iter()
        .map(|crease| Crease {
            at: printer.mark(crease.at),
            kind: crease.kind,
            pleat: ordinal(crease.pleat),
        })
        .collect()
}

/// What pressed creases lose, all of one panel alike.
pub(crate) fn turn_of_cloth(made: &[PleatMade], printer: &Printer<'_>) -> Option<TurnOfCloth> {
    let turned = || made.iter().filter(|pleat| pleat.turn.is_positive());
    let folds: usize = turned().map(|pleat| pleat.folds.len()).sum();
    Some(TurnOfCloth {
        each: printer.plain(turned().next()?.turn),
        creases: number(folds.saturating_mul(2)),
        together: printer.mark(turned().map(PleatMade::lost_in_turns).sum()),
    })
}

pub(crate) fn stretches(folding: &Folding, printer: &Printer<'_>) -> Vec<Stretch> {
    let seen = seen_widths(folding);
    folding
        .stretches
        .iter()
        .zip(seen)
        .map(|(stretch, seen)| Stretch {
            flat: printer.run(stretch.flat_from, stretch.flat_to),
            finished: printer.run(stretch.finished_from, stretch.finished_to),
            face_up: stretch.face_up,
            height: number(stretch.height),
            drawn_up: stretch.lies != Lies::Flat,
            seen: how_much(stretch, seen),
        })
        .collect()
}

pub(crate) fn layers(runs: &[LayerRun], printer: &Printer<'_>) -> Vec<Layers> {
    runs.iter()
        .map(|run| Layers {
            finished: printer.run(run.from, run.to),
            layers: run.layers,
        })
        .collect()
}

/// For each stretch, the width over which it lies on top.
fn seen_widths(folding: &Folding) -> Vec<Length> {
    let mut seen = vec![Length::ZERO; folding.stretches.len()];
    for run in &folding.layers {
        if let Some(width) = seen.get_mut(run.top) {
            *width += run.to - run.from;
        }
    }
    seen
}

fn how_much(stretch: &StretchMade, seen: Length) -> Seen {
    if stretch.lies == Lies::Drawn {
        Seen::Visible
    } else if !seen.is_positive() || stretch.lies == Lies::BetweenFingers {
        Seen::Hidden
    } else if seen < stretch.laid() {
        Seen::PartlyVisible
    } else {
        Seen::Visible
    }
}
