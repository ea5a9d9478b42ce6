//! The arcs of a cutting line, for who draws them with a compass or a string.

use pelmet_packet::{Arc, OutlinePoint};

use crate::content::{SheetBlocks, TextColumn, TextTable};

/// The arcs of a line; nothing where there are none.
pub(super) fn print(outline: &[OutlinePoint], sheet: &mut SheetBlocks) {
    let mut table = TextTable::new([
        TextColumn::text("Between"),
        TextColumn::text("Radius"),
        TextColumn::text("Centre across"),
        TextColumn::text("Centre down"),
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
        sheet.paragraph("Its arcs of circles, to be drawn with a string about the centre, which is measured from the same edges:");
        sheet.table(&table);
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
    use crate::content::{SheetBlock, SheetBlocks};
    use crate::examples::packets;

    /// The rows of the table of a panel's arcs.
    fn rows(panel: &str) -> Vec<Vec<String>> {
        let [garden_room, ..] = packets();
        let panels = &garden_room.windows[0].panels;
        let panel = panels.iter().find(|of| of.name == panel).unwrap();
        let mut sheet = SheetBlocks::default();
        print(&panel.pieces[0].outline, &mut sheet);
        let tables = sheet.into_blocks().into_iter();
        let rows = tables.filter_map(|block| match block {
            SheetBlock::Table(table) => Some(table.rows().to_vec()),
            _ => None,
        });
        rows.flatten().collect()
    }

    /// Six scallops 4 in wide and 2 in deep are half circles of 2 in, cut 1/2 in farther out; the first
    /// has its middle 2 in from the sewn edge, which lies 1/2 in from the cut one.
    #[test]
    fn every_scallop_is_told_with_its_centre() {
        let rows = rows("scalloped");
        for centre in [
            "2 1/2 in",
            "6 1/2 in",
            "10 1/2 in",
            "14 1/2 in",
            "18 1/2 in",
            "22 1/2 in",
        ] {
            let told = rows.iter().filter(|row| row[1..3] == ["2 1/2 in", centre]);
            assert_eq!(told.count(), 1, "{centre} in {rows:?}");
        }
    }

    #[test]
    fn a_line_without_arcs_has_no_table() {
        assert!(rows("tide").is_empty());
    }
}
