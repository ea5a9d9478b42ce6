//! Mark list: everything to mark on each flat panel, in working order.

mod mitres;

use pelmet_packet::{Mark, Packet, Panel};

use crate::content::SheetBlocks;
use crate::content::{TextColumn, TextTable};
use crate::sheet::folding_chart;
use crate::sheet::parts::each_panel;
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
    let blank = String::new;
    Some([
        blank(),
        String::from("brought to"),
        fold.brought_to_from_left.text.clone(),
        fold.brought_to_from_centre.text.clone(),
        blank(),
        blank(),
        blank(),
    ])
}

fn together_row(mark: &Mark) -> Option<[String; 7]> {
    let stitch = mark.stitch.as_ref()?;
    let blank = String::new;
    let what = if stitch.leaves.mm == 0.0 {
        String::from("stitched to")
    } else {
        format!("stitched {} from", stitch.leaves.text)
    };
    Some([
        blank(),
        what,
        stitch.other_from_left.text.clone(),
        stitch.other_from_centre.text.clone(),
        blank(),
        blank(),
        blank(),
    ])
}

fn drawn_row(mark: &Mark) -> Option<[String; 7]> {
    let gather = mark.gather.as_ref()?;
    let blank = String::new;
    Some([
        blank(),
        String::from("drawn up to"),
        gather.drawn_to.text.clone(),
        blank(),
        blank(),
        blank(),
        blank(),
    ])
}
