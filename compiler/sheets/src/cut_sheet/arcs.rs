//! The arcs of a cutting line, for who draws them with a compass or a string.

use pelmet_packet::{Arc, OutlinePoint};

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

#[cfg(test)]
mod tests {
    use super::print;
    use crate::TextOptions;
    use crate::drawing::tests::packets;
    use crate::page::Page;
    use crate::plain::plain;

    fn printed(panel: &str) -> String {
        let [garden_room, ..] = packets();
        let panels = &garden_room.windows[0].panels;
        let panel = panels.iter().find(|of| of.name == panel).unwrap();
        let mut page = Page::default();
        print(&panel.pieces[0].outline, &mut page);
        plain(page, TextOptions::default())
    }

    /// Six scallops 4 in wide and 2 in deep are half circles of 2 in, cut 1/2 in farther out; the first
    /// has its middle 2 in from the sewn edge, which lies 1/2 in from the cut one.
    #[test]
    fn every_scallop_is_told_with_its_centre() {
        let text = printed("scalloped");
        for centre in [
            "2 1/2 in",
            "6 1/2 in",
            "10 1/2 in",
            "14 1/2 in",
            "18 1/2 in",
            "22 1/2 in",
        ] {
            let row = text.lines().filter(|line| {
                let told: Vec<&str> = line
                    .split("  ")
                    .map(str::trim)
                    .filter(|it| !it.is_empty())
                    .collect();
                told.get(1..3) == Some(&["2 1/2 in", centre])
            });
            assert_eq!(row.count(), 1, "{centre} in {text}");
        }
    }

    #[test]
    fn a_line_without_arcs_has_no_table() {
        assert!(!printed("tide").contains("Radius"));
    }
}
