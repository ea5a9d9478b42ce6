//! The packet as people read it: sheets as plain text or on one page, and drawings.
//!
//! [`text`] prints every sheet and [`sheet`] one of them. A sheet is a view: it prints what the
//! packet holds and works nothing out.

mod cautions;
mod changes;
mod checks;
mod choice;
mod cloths;
mod cut_sheet;
mod data;
mod drawing;
mod dxf;
mod elevation;
mod files;
mod folding_chart;
mod fractions;
mod html;
mod labels;
mod making_order;
mod mark_list;
mod notions;
mod options;
mod outlines;
mod page;
mod paper;
mod parts;
mod pdf;
mod plain;
mod printed;
mod quote;
mod rod_check;
mod table;
mod templates;
mod words;
mod wrap;
mod yardage;

pub use changes::{Versions, changes_html, changes_text};
pub use choice::Choice;
pub use files::{FORMS, Form, PacketFile, files, is_of_a_packet};
pub use options::{MINIMUM_WIDTH, TextOptions};
pub use paper::Paper;
pub use pelmet_packet::SheetKind;

use page::Page;
use pelmet_packet::{Cloth, ClothComparison, Packet, Panel};

/// Every sheet, in the order the work is done.
pub const ALL: [SheetKind; 11] = [
    SheetKind::Elevation,
    SheetKind::Yardage,
    SheetKind::Notions,
    SheetKind::Quote,
    SheetKind::CutSheet,
    SheetKind::Labels,
    SheetKind::MarkList,
    SheetKind::FoldingChart,
    SheetKind::MakingOrder,
    SheetKind::RodCheck,
    SheetKind::Checks,
];

/// Sheets as text, one after the other.
pub fn text(packet: &Packet, sheets: &[SheetKind], options: TextOptions) -> String {
    let sheets = sheets.iter().map(|kind| sheet(packet, *kind, options));
    sheets.collect::<Vec<String>>().join("\n\n")
}

/// One sheet as text.
pub fn sheet(packet: &Packet, kind: SheetKind, options: TextOptions) -> String {
    plain::plain(blocks(packet, kind), options)
}

/// Sheets, with their drawings, as one HTML page that asks for nothing outside itself. It is printed
/// on the paper named; where none is, on whatever lies in the printer.
pub fn html(packet: &Packet, sheets: &[SheetKind], paper: Option<Paper>) -> String {
    html::page(packet, sheets, paper)
}

/// Sheets, with their drawings, as a PDF file with pages of this paper.
pub fn print(packet: &Packet, sheets: &[SheetKind], paper: Paper) -> Vec<u8> {
    printed::printed(packet, sheets, paper)
}

/// What stands on a sheet.
fn blocks(packet: &Packet, kind: SheetKind) -> Page {
    let mut page = Page::default();
    page.title(&format!("{}: {}", title(kind), packet.title));
    match kind {
        SheetKind::Elevation => elevation::print(packet, &mut page),
        SheetKind::Yardage => yardage::print(packet, &mut page),
        SheetKind::Quote => quote::print(packet, &mut page),
        SheetKind::Notions => notions::print(packet, &mut page),
        SheetKind::CutSheet => cut_sheet::print(packet, &mut page),
        SheetKind::Labels => labels::print(packet, &mut page),
        SheetKind::MarkList => mark_list::print(packet, &mut page),
        SheetKind::FoldingChart => folding_chart::print(packet, &mut page),
        SheetKind::MakingOrder => making_order::print(packet, &mut page),
        SheetKind::RodCheck => rod_check::print(packet, &mut page),
        SheetKind::Checks => checks::print(packet, &mut page),
    }
    cautions::print(packet, kind, &mut page);
    page
}

/// What a sheet is called.
pub fn title(kind: SheetKind) -> &'static str {
    match kind {
        SheetKind::Elevation => "Elevation",
        SheetKind::Yardage => "Yardage",
        SheetKind::Quote => "Quote",
        SheetKind::Notions => "Tape and fasteners",
        SheetKind::CutSheet => "Cut sheet",
        SheetKind::Labels => "Labels",
        SheetKind::MarkList => "Mark list",
        SheetKind::FoldingChart => "Folding chart",
        SheetKind::MakingOrder => "Making order",
        SheetKind::RodCheck => "Rod check",
        SheetKind::Checks => "What to check",
    }
}

/// The word a sheet is chosen by, and the end of its address on a page: its title, made one word.
pub fn word(kind: SheetKind) -> &'static str {
    match kind {
        SheetKind::Elevation => "elevation",
        SheetKind::Yardage => "yardage",
        SheetKind::Quote => "quote",
        SheetKind::Notions => "tape-and-fasteners",
        SheetKind::CutSheet => "cut-sheet",
        SheetKind::Labels => "labels",
        SheetKind::MarkList => "mark-list",
        SheetKind::FoldingChart => "folding-chart",
        SheetKind::MakingOrder => "making-order",
        SheetKind::RodCheck => "rod-check",
        SheetKind::Checks => "what-to-check",
    }
}

/// What a job would take of other cloths, as text.
pub fn cloths_text(comparison: &ClothComparison, options: TextOptions) -> String {
    let mut page = Page::default();
    cloths::print(comparison, &mut page);
    plain::plain(page, options)
}

/// The elevation of every window to scale, as SVG files: the name of the window, and the file.
pub fn elevations(packet: &Packet) -> Vec<(&str, String)> {
    let windows = packet.windows.iter();
    let drawn = |window| drawing::svg(&drawing::elevation(window));
    windows
        .map(|window| (window.name.as_str(), drawn(window)))
        .collect()
}

/// The layout of every cloth to scale, as SVG files: the name of the cloth, with the number of the
/// drawing where there are several, and the file.
pub fn layouts(packet: &Packet) -> Vec<(String, String)> {
    let cloths = packet.cloths.iter();
    cloths.flat_map(layouts_of).collect()
}

fn layouts_of(cloth: &Cloth) -> Vec<(String, String)> {
    let drawings = drawing::layout(cloth);
    let count = drawings.len();
    let named = |(number, drawing): (usize, &drawing::Drawing)| {
        let name = if count > 1 {
            format!("{}-{number}-of-{count}", cloth.name)
        } else {
            cloth.name.clone()
        };
        (name, drawing::svg(drawing))
    };
    (1..).zip(&drawings).map(named).collect()
}

/// Every line that pieces are cut by, opened out at its true size, as SVG files: a name, and the file.
pub fn outline_drawings(packet: &Packet) -> Vec<(String, String)> {
    let outlines = outlines::outlines(packet);
    let drawn = |outline: &outlines::Outline<'_>| drawing::svg(&outlines::drawing(outline));
    let named = outlines.iter();
    named
        .map(|outline| (outline.file_name(), drawn(outline)))
        .collect()
}

/// The same for a plotter or a cutter, as DXF files.
pub fn outline_plots(packet: &Packet) -> Vec<(String, String)> {
    let outlines = outlines::outlines(packet);
    let named = outlines.iter();
    named
        .map(|outline| (outline.file_name(), dxf::dxf(outline)))
        .collect()
}

/// The folding of every pleated panel to scale, as SVG files: the names of the window and the panel, and
/// the file. A wide panel has several.
pub fn foldings(packet: &Packet) -> Vec<(String, String)> {
    of_panels(packet, drawing::folding)
}

/// Every piece with its measures to scale, as SVG files: the names of the window and the panel, and the
/// file. Pieces cut by one line have one.
pub fn cut_pieces(packet: &Packet) -> Vec<(String, String)> {
    of_panels(packet, cut_sheet::drawings)
}

fn of_panels(
    packet: &Packet,
    drawings: impl Fn(&Panel) -> Vec<drawing::Drawing>,
) -> Vec<(String, String)> {
    let panels = packet.windows.iter().flat_map(|window| {
        let panels = window.panels.iter();
        panels.map(move |panel| (window, panel))
    });
    let drawn = panels.flat_map(|(window, panel)| {
        let name = format!("{}-{}", window.name, panel.name);
        let drawings = drawings(panel).into_iter();
        drawings.map(move |drawing| (name.clone(), drawing::svg(&drawing)))
    });
    drawn.collect()
}
