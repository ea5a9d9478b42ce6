//! Mark list: everything to mark on each flat panel, in working order.

mod mitres;

use pelmet_packet::{Mark, Measure, Packet, Panel};

use crate::content::{SheetBlocks, TextColumn, TextTable};
use crate::sheet::by_window::each_panel;
use crate::sheet::folding_chart;
use crate::text::words::{counted_of, finished, optional};

pub(crate) fn print(packet: &Packet, sheet: &mut SheetBlocks) {
    sheet.paragraph(
        "Mark on the made-up panel, flat, face up, the heading away from you. Every mark is \
        measured from one edge, never from the mark before it. Down is from the made-up top edge.",
    );
    each_panel(packet, sheet, print_panel);
}

fn print_panel(panel: &Panel, sheet: &mut SheetBlocks) {
    let words = format!(
        "{}, {} flat, {}.",
        counted_of(panel.quantity, "panel", "panels alike"),
        panel.flat_width.text,
        finished(panel),
    );
    sheet.panel(&panel.name, &words);
    if let Some(turn) = folding_chart::turn_of_cloth(panel) {
        sheet.paragraph(&turn);
    }
    sheet.table(&marks(panel));
    mitres::print(&panel.mitres, sheet);
}

/// A fold takes two rows: its crease, and the line it is brought to in the same columns.
fn marks(panel: &Panel) -> TextTable {
    let mut table = TextTable::new([
        TextColumn::count("No"),
        TextColumn::text("Mark"),
        TextColumn::text("From left edge"),
        TextColumn::text("From centre"),
        TextColumn::text("Down"),
        TextColumn::text("Depth"),
        TextColumn::text("Toward"),
    ]);
    for mark in &panel.marks {
        table.row(mark_row(mark));
        for row in [brought_to_row(mark), together_row(mark), drawn_row(mark)] {
            row.into_iter().for_each(|row| table.row(row));
        }
    }
    table
}

fn mark_row(mark: &Mark) -> [String; 7] {
    let fold = mark.fold.as_ref();
    let depth = fold.map(|fold| &fold.depth);
    let depth = depth.or(mark.stitch.as_ref().map(|stitch| &stitch.depth));
    let all_across = String::from("all across");
    [
        mark.number.to_string(),
        mark.name.clone(),
        mark.from_left
            .as_ref()
            .map_or(all_across, |from| from.text.clone()),
        optional(mark.from_centre.as_ref()),
        optional(mark.down.as_ref()),
        optional(depth),
        fold.map(|fold| fold.toward.to_string()).unwrap_or_default(),
    ]
}

fn brought_to_row(mark: &Mark) -> Option<[String; 7]> {
    let fold = mark.fold.as_ref()?;
    Some(row_below(
        String::from("brought to"),
        &fold.brought_to_from_left,
        Some(&fold.brought_to_from_centre),
    ))
}

fn together_row(mark: &Mark) -> Option<[String; 7]> {
    let stitch = mark.stitch.as_ref()?;
    let what = if stitch.leaves.mm == 0.0 {
        String::from("stitched to")
    } else {
        format!("stitched {} from", stitch.leaves.text)
    };
    let centre = Some(&stitch.other_from_centre);
    Some(row_below(what, &stitch.other_from_left, centre))
}

fn drawn_row(mark: &Mark) -> Option<[String; 7]> {
    let gather = mark.gather.as_ref()?;
    let what = String::from("drawn up to");
    Some(row_below(what, &gather.drawn_to, None))
}

/// What belongs to the mark in the row above: it has no number, and its place stands under the mark's.
fn row_below(what: String, from_left: &Measure, from_centre: Option<&Measure>) -> [String; 7] {
    let blank = String::new;
    let (left, centre) = (from_left.text.clone(), optional(from_centre));
    [blank(), what, left, centre, blank(), blank(), blank()]
}
