//! One kind of panel.

use pelmet_measure::Length;
use pelmet_model::{FastenerRun, Layer, PanelMade, TapeMade};
use pelmet_packet::{Fastener, Measure, Panel, Piece, PleatStrips, TapeRun, Tolerance};

use super::hung_panel::HungPanel;
use super::making_order::{Bench, making_order};
use super::print_followed::print_followed;
use super::printer::{Printer, times};
use super::{band, folded, heading, mark, mitre, outline, piece, pleat};

pub(crate) fn panel(bench: Bench<'_>) -> Panel {
    let Bench {
        hung: HungPanel { order, made, .. },
        printer,
        ..
    } = bench;
    let (cut_width, cut_length) = face_size(made);
    Panel {
        name: order.name.clone(),
        quantity: made.quantity,
        finished_width: printer.mark(made.finished),
        flat_width: printer.mark(made.flat),
        cut_width: printer.cut(cut_width),
        cut_length: printer.cut(cut_length),
        drop: printer.mark(order.drop),
        made_length: printer.mark(made.made_length),
        heading_depth: printer.mark(made.heading_depth),
        heading: heading::in_words(&order.heading, printer),
        making: order.making.name.clone(),
        fullness: times(made.flat, made.finished),
        tolerance: tolerance(made, printer),
        pleats: pleat::pleats(&made.pleating.pleats, printer),
        print_followed: print_followed(order.pleats.as_ref(), &made.pleating.pleats, printer),
        turn_of_cloth: pleat::turn_of_cloth(&made.pleating.pleats, printer),
        creases: pleat::creases(&made.pleating.creases, printer),
        stretches: pleat::stretches(&made.folding, printer),
        layers: pleat::layers(&made.folding.layers, printer),
        thickest: made.folding.thickest,
        thickest_stack: made.thickest_stack.map(|stack| printer.mark(stack)),
        folded: made
            .folded
            .as_ref()
            .map(|outline| folded::folded(outline, &made.folding, printer)),
        outline: outline::sewn(&made.shape, printer),
        bands: band::bands(&made.bands, printer),
        mitres: mitre::mitres(&made.mitres, printer),
        pieces: pieces(bench),
        tape_width: order
            .making
            .tape
            .as_ref()
            .map(|tape| printer.plain(tape.width)),
        tape: made
            .tape
            .iter()
            .map(|run| tape_run(run, made, printer))
            .collect(),
        pleat_strips: pleat_strips(made, printer),
        tape_together: printer.cut(made.tape.iter().map(|run| run.length).sum()),
        fasteners: made
            .fasteners
            .iter()
            .map(|run| fastener(run, printer))
            .collect(),
        marks: mark::marks(&made.marks, printer),
        making_order: making_order(bench),
        hang_range: heading::hang_range(&order.heading, order.drop, printer),
        covers_each_side: covers_each_side(bench),
        weight: made.weight.map(|mass| printer.weight(mass)),
    }
}

fn pieces(bench: Bench<'_>) -> Vec<Piece> {
    let HungPanel { order, made, .. } = bench.hung;
    let pieces = made.pieces.iter();
    let (fabrics, printer) = (bench.fabrics, bench.printer);
    pieces
        .map(|piece| piece::piece(&order.name, piece, &made.shape, fabrics, printer))
        .collect()
}

fn covers_each_side(bench: Bench<'_>) -> Option<Measure> {
    let Bench { hung, window, .. } = bench;
    let lies_over = window.over_joins.contains(&hung.index);
    let covers = (hung.made.finished - window.overlap).divided(2);
    lies_over.then(|| bench.printer.mark(covers))
}

fn tolerance(made: &PanelMade, printer: &Printer<'_>) -> Option<Tolerance> {
    made.tolerance.map(|(worst, likely)| Tolerance {
        worst: printer.mark(worst),
        likely: printer.mark(likely),
    })
}

fn pleat_strips(made: &PanelMade, printer: &Printer<'_>) -> Option<PleatStrips> {
    made.pleat_strips.map(|strips| PleatStrips {
        count: strips.count,
        length: printer.cut(strips.length),
    })
}

/// The cut size of the face; a panel without a face has none.
fn face_size(made: &PanelMade) -> (Length, Length) {
    made.pieces
        .iter()
        .find(|piece| piece.layer == Layer::Face)
        .map_or((Length::ZERO, Length::ZERO), |face| {
            (face.cut_width, face.cut_length)
        })
}

fn tape_run(run: &TapeMade, made: &PanelMade, printer: &Printer<'_>) -> TapeRun {
    TapeRun {
        edge: run.kind,
        from_corner: outline::corner_at(&made.shape, run.from),
        to_corner: outline::corner_at(&made.shape, run.to),
        from: printer.place(run.from.across, run.from.down),
        to: printer.place(run.to.across, run.to.down),
        length: printer.cut(run.length),
    }
}

fn fastener(run: &FastenerRun, printer: &Printer<'_>) -> Fastener {
    Fastener {
        name: run.name.clone(),
        width: printer.plain(run.width),
        length: printer.cut(run.length),
        down: printer.mark(run.down),
    }
}
