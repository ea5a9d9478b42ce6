//! Everything to mark on each flat panel, in working order.

use pelmet_packet::{Mark, Measure, Packet, Panel, Window};

use super::cell_table::{CellTable, TableName};
use super::column::{CellColumn, LengthUse, table};
use crate::parts::every_panel;

struct MarkRow<'a> {
    window: &'a Window,
    panel: &'a Panel,
    mark: &'a Mark,
}

fn columns<'a>() -> [CellColumn<MarkRow<'a>>; 13] {
    [
        CellColumn::Text("Window", |it| it.window.name.clone()),
        CellColumn::Text("Panel", |it| it.panel.name.clone()),
        CellColumn::Number("Number", |it| Some(f64::from(it.mark.number))),
        CellColumn::Text("Mark", |it| it.mark.name.clone()),
        CellColumn::Length("From left edge", LengthUse::OnTheTable, |it| {
            it.mark.from_left.as_ref()
        }),
        CellColumn::Length("From centre", LengthUse::OnTheTable, |it| {
            it.mark.from_centre.as_ref()
        }),
        CellColumn::Length("Down", LengthUse::OnTheTable, |it| it.mark.down.as_ref()),
        CellColumn::Length("Depth", LengthUse::OnTheTable, depth),
        CellColumn::Text("Toward", |it| {
            let fold = it.mark.fold.as_ref();
            fold.map(|fold| fold.toward.to_string()).unwrap_or_default()
        }),
        CellColumn::Length("Brought to, from left edge", LengthUse::OnTheTable, |it| {
            it.mark.fold.as_ref().map(|fold| &fold.brought_to_from_left)
        }),
        CellColumn::Length("Stitched to, from left edge", LengthUse::OnTheTable, |it| {
            let stitch = it.mark.stitch.as_ref();
            stitch.map(|stitch| &stitch.other_from_left)
        }),
        CellColumn::Length("Left between", LengthUse::OnTheTable, |it| {
            it.mark.stitch.as_ref().map(|stitch| &stitch.leaves)
        }),
        CellColumn::Length("Drawn up to", LengthUse::OnTheTable, |it| {
            it.mark.gather.as_ref().map(|gather| &gather.drawn_to)
        }),
    ]
}

pub(super) fn table_of(packet: &Packet) -> CellTable {
    let marks = every_panel(packet).flat_map(|(window, panel)| {
        let marks = panel.marks.iter();
        marks.map(move |mark| MarkRow {
            window,
            panel,
            mark,
        })
    });
    let marks: Vec<MarkRow<'_>> = marks.collect();
    table(TableName::Marks, packet.units.system, &columns(), &marks)
}

fn depth<'a>(it: &'a MarkRow<'_>) -> Option<&'a Measure> {
    let fold = it.mark.fold.as_ref().map(|fold| &fold.depth);
    fold.or(it.mark.stitch.as_ref().map(|stitch| &stitch.depth))
}
