//! A panel with its pleats laid.

use pelmet_model::{Elevation, FoldedOutline, Folding, LayerFolded, LiningShown, Point};
use pelmet_packet::{FoldedEdge, FoldedLayer, FoldedPanel, LiningSeen, Place};

use super::count::{number, ordinal};
use super::printer::Printer;

pub(crate) fn folded(
    outline: &FoldedOutline,
    folding: &Folding,
    printer: &Printer<'_>,
) -> FoldedPanel {
    FoldedPanel {
        extent: printer.run(folding.leftmost, folding.rightmost),
        layers: outline
            .layers
            .iter()
            .map(|layer| folded_layer(layer, printer))
            .collect(),
        seen: outline.elevation.as_ref().map(|seen| edge(seen, printer)),
    }
}

fn folded_layer(layer: &LayerFolded, printer: &Printer<'_>) -> FoldedLayer {
    FoldedLayer {
        stretch: ordinal(layer.stretch),
        height: number(layer.height),
        face_up: layer.face_up,
        outlines: layer
            .parts
            .iter()
            .map(|part| places(part, printer))
            .collect(),
    }
}

fn edge(seen: &Elevation, printer: &Printer<'_>) -> FoldedEdge {
    FoldedEdge {
        lower_edge: places(&seen.lower_edge, printer),
        lowest: seen.lowest().map(|point| place(point, printer)),
        highest: seen.highest().map(|point| place(point, printer)),
        lining: seen
            .lining
            .iter()
            .map(|shown| lining(shown, printer))
            .collect(),
    }
}

fn lining(shown: &LiningShown, printer: &Printer<'_>) -> LiningSeen {
    LiningSeen {
        stretch: ordinal(shown.stretch),
        across: printer.run(shown.across.0, shown.across.1),
        down: printer.run(shown.down.0, shown.down.1),
    }
}

fn places(points: &[Point], printer: &Printer<'_>) -> Vec<Place> {
    points.iter().map(|point| place(*point, printer)).collect()
}

fn place(point: Point, printer: &Printer<'_>) -> Place {
    printer.place(point.across, point.down)
}
