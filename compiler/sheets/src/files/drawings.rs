//! The drawings of a packet, each with the name its file is to have.

use pelmet_packet::{Cloth, Packet, Panel};

use crate::drawing::Drawing;
use crate::parts::every_panel;
use crate::to_scale;
use crate::true_size::outlines::{SharedOutline, outline_drawing, outlines};
use crate::writer::dxf;
use crate::writer::svg::svg;

/// The elevation of every window to scale, as SVG files: the name of the window, and the file.
pub(super) fn elevations(packet: &Packet) -> Vec<(&str, String)> {
    let windows = packet.windows.iter();
    let drawn = |window| svg(&to_scale::elevation(window));
    windows
        .map(|window| (window.name.as_str(), drawn(window)))
        .collect()
}

/// The layout of every cloth to scale, as SVG files: the name of the cloth, with the number of the
/// drawing where there are several, and the file.
pub(super) fn layouts(packet: &Packet) -> Vec<(String, String)> {
    let cloths = packet.cloths.iter();
    cloths.flat_map(layouts_of).collect()
}

fn layouts_of(cloth: &Cloth) -> Vec<(String, String)> {
    let drawings = to_scale::layout(cloth);
    let count = drawings.len();
    let named = |(number, drawing): (usize, &Drawing)| {
        let name = if count > 1 {
            format!("{}-{number}-of-{count}", cloth.name)
        } else {
            cloth.name.clone()
        };
        (name, svg(drawing))
    };
    (1..).zip(&drawings).map(named).collect()
}

/// Every line that pieces are cut by, opened out at its true size, as SVG files: a name, and the file.
pub(super) fn outline_drawings(packet: &Packet) -> Vec<(String, String)> {
    let outlines = outlines(packet);
    let drawn = |outline: &SharedOutline<'_>| svg(&outline_drawing(outline));
    let named = outlines.iter();
    named
        .map(|outline| (outline.file_name(), drawn(outline)))
        .collect()
}

/// The same for a plotter or a cutter, as DXF files.
pub(super) fn outline_plots(packet: &Packet) -> Vec<(String, String)> {
    let outlines = outlines(packet);
    let named = outlines.iter();
    named
        .map(|outline| (outline.file_name(), dxf(outline)))
        .collect()
}

/// The folding of every pleated panel to scale, as SVG files: the names of the window and the panel, and
/// the file. A wide panel has several.
pub(super) fn foldings(packet: &Packet) -> Vec<(String, String)> {
    of_panels(packet, to_scale::folding)
}

/// Every piece with its measures to scale, as SVG files: the names of the window and the panel, and the
/// file. Pieces cut by one line have one.
pub(super) fn cut_pieces(packet: &Packet) -> Vec<(String, String)> {
    of_panels(packet, to_scale::pieces)
}

fn of_panels(packet: &Packet, drawings: impl Fn(&Panel) -> Vec<Drawing>) -> Vec<(String, String)> {
    let drawn = every_panel(packet).flat_map(|(window, panel)| {
        let name = format!("{}-{}", window.name, panel.name);
        let drawings = drawings(panel).into_iter();
        drawings.map(move |drawing| (name.clone(), svg(&drawing)))
    });
    drawn.collect()
}
