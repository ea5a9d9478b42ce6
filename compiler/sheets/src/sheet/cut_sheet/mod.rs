//! Cut sheet: every piece with its size, its allowances and its cutting line.

mod arcs;

use pelmet_packet::{CutAllowance, JoinSeam, MeasuredFrom, Packet, Panel, Piece};

use crate::content::{SheetBlocks, TextColumn, TextTable};
use crate::sheet::by_window::each_panel;
use crate::text::words::{counted_of, edges, finished};
use crate::to_scale::{self, is_rectangle};

pub(crate) fn print(packet: &Packet, sheet: &mut SheetBlocks) {
    sheet.paragraph(&format!(
        "Sizes are width x length with every allowance included, rounded up to {}. Corners of a \
        cutting line are to the nearest {}.",
        packet.units.cut_to.text, packet.units.mark_to.text,
    ));
    each_panel(packet, sheet, print_panel);
}

fn print_panel(panel: &Panel, sheet: &mut SheetBlocks) {
    let words = format!(
        "{}, {} flat, {}, made up {} long.",
        counted_of(panel.quantity, "panel", "panels alike"),
        panel.flat_width.text,
        finished(panel),
        panel.made_length.text,
    );
    sheet.panel(&panel.name, &words);
    sheet.table(&pieces(panel));
    sheet.blank();
    for piece in &panel.pieces {
        sheet.item(&allowances(piece));
        for more in [folded(piece), joined(piece)].into_iter().flatten() {
            sheet.item(&more);
        }
    }
    for alike in to_scale::cut_alike(panel) {
        if let Some(drawing) = to_scale::piece(panel, alike) {
            sheet.drawing(drawing);
        }
        print_cutting_line(alike, sheet);
    }
}

fn pieces(panel: &Panel) -> TextTable {
    let mut table = TextTable::new([
        TextColumn::count("Cut"),
        TextColumn::text("Piece"),
        TextColumn::text("Cloth"),
        TextColumn::text("Size"),
        TextColumn::text("How"),
        TextColumn::text("Area"),
    ]);
    for piece in &panel.pieces {
        table.row([
            piece.quantity.to_string(),
            piece.label.clone(),
            piece.cloth.clone(),
            format!("{} x {}", piece.cut_width.text, piece.cut_length.text),
            how(piece),
            piece.area.text.clone(),
        ]);
    }
    table
}

fn how(piece: &Piece) -> String {
    let lying = match (piece.mirrored, piece.railroaded) {
        (false, false) => "",
        (true, false) => ", turned over",
        (false, true) => ", lying along the cloth",
        (true, true) => ", turned over, lying along the cloth",
    };
    if piece.on_fold {
        format!("on the fold, draw {} wide{lying}", piece.draw_width.text)
    } else {
        format!("open{lying}")
    }
}

fn allowances(piece: &Piece) -> String {
    let by_edge =
        |allowance: &CutAllowance| format!("{} {}", edges(allowance.edge), allowance.text);
    let told: Vec<String> = piece.allowances.iter().map(by_edge).collect();
    let shrinkage = piece
        .shrinkage
        .as_ref()
        .map(|part| format!("{part} of all for shrinkage"));
    let told: Vec<String> = told.into_iter().chain(shrinkage).collect();
    format!("{} includes: {}.", piece.label, told.join("; "))
}

/// Where a face is folded that lines itself.
fn folded(piece: &Piece) -> Option<String> {
    let fold = piece.folded_at.as_ref()?;
    Some(format!(
        "{} is folded across {} below its cut top edge: what lies below comes up behind as the lining.",
        piece.label, fold.text,
    ))
}

fn joined(piece: &Piece) -> Option<String> {
    let joined = piece.joined.as_ref()?;
    let strips: Vec<&str> = joined
        .strips
        .iter()
        .map(|strip| strip.text.as_str())
        .collect();
    let seams: Vec<String> = joined.seams.iter().map(seam).collect();
    Some(format!(
        "{} is joined from {}, left to right {} wide and {} long, {} seam allowance on each side of a join. \
        Sewn at {} from the left edge of the flat panel.",
        piece.label,
        crate::text::words::counted(strips.len(), "strip", "strips"),
        strips.join(", "),
        piece.cut_length.text,
        joined.allowance.text,
        seams.join(", "),
    ))
}

fn seam(seam: &JoinSeam) -> String {
    if seam.hidden {
        format!("{} (hidden by a pleat)", seam.at.text)
    } else {
        seam.at.text.clone()
    }
}

/// The corners of the cutting line of pieces alike; a rectangle is told by its size alone.
fn print_cutting_line(alike: &[Piece], sheet: &mut SheetBlocks) {
    let Some(piece) = alike.first().filter(|piece| !is_rectangle(&piece.outline)) else {
        return;
    };
    let (edge, across) = match piece.outline_from {
        MeasuredFrom::LeftEdge => ("the left cut edge", "From left edge"),
        MeasuredFrom::Fold => ("the fold", "From fold"),
    };
    let labels: Vec<&str> = alike.iter().map(|piece| piece.label.as_str()).collect();
    sheet.paragraph(&format!(
        "Cutting line of {}, corner by corner, from {edge} and from the top cut edge:",
        labels.join(" and of "),
    ));
    let curved = piece.outline.iter().any(|point| point.on_curve);
    let mut table = TextTable::new([
        TextColumn::count(if curved { "Point" } else { "Corner" }),
        TextColumn::text(across),
        TextColumn::text("From top"),
        TextColumn::text("Line"),
    ]);
    for point in &piece.outline {
        // Points without a number are for a drawing only.
        let Some(number) = point.number else { continue };
        let line = match (curved, point.on_curve) {
            (false, _) => "",
            (true, false) => "corner",
            (true, true) => "curve",
        };
        table.row([
            number.to_string(),
            point.at.across.text.clone(),
            point.at.down.text.clone(),
            String::from(line),
        ]);
    }
    sheet.table(&table);
    arcs::print(&piece.outline, sheet);
}
