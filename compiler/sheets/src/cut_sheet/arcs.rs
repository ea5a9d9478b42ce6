//! The arcs of a cutting line, for who draws them with a compass or a string.

use pelmet_packet::packet::{Arc, OutlinePoint};

use crate::page::Page;
use crate::table::{Column, Table};

/// The arcs of a line; nothing where there are none.
pub(super) fn print(outline: &[OutlinePoint], page: &mut Page) {
    let mut table = Table::new([
        Column::text("Between"),
        Column::text("Radius"),
        Column::text("Centre across"),
        Column::text("Centre down"),
    ]);
    for (index, point) in outline.iter().enumerate() {
        if let Some(arc) = &point.arc {
            table.row([
                between(outline, index, arc),
                arc.radius.text.clone(),
                arc.centre.across.text.clone(),
                arc.centre.down.text.clone(),
            ]);
        }
    }
    if !table.is_empty() {
        page.paragraph("Its arcs of circles, to be drawn with a string about the centre, which is measured from the same edges:");
        page.table(&table);
    }
}

/// The numbered points that an arc lies between; it may begin and end a little inside of them.
fn between(outline: &[OutlinePoint], start: usize, arc: &Arc) -> String {
    let points = usize::try_from(arc.points).unwrap_or(usize::MAX);
    let end = start.saturating_add(points);
    let number = |point: &OutlinePoint| point.number;
    let (up_to_start, from_end) = (
        outline.iter().take(start.saturating_add(1)),
        outline.iter().skip(end),
    );
    let from = up_to_start.rev().find_map(number);
    let to = from_end.chain(outline).find_map(number);
    match (from, to) {
        (Some(from), Some(to)) => format!("{from} and {to}"),
        _ => String::new(),
    }
}
