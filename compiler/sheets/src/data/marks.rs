//! Everything to mark on each flat panel, in working order.

use pelmet_packet::{Mark, Measure, Packet, Panel, Window};

use super::Sheet;
use super::column::{Column, Kind, table};

struct Marked<'a> {
    window: &'a Window,
    panel: &'a Panel,
    mark: &'a Mark,
}

fn columns<'a>() -> [Column<Marked<'a>>; 13] {
    [
        Column::Text("Window", |it| it.window.name.clone()),
        Column::Text("Panel", |it| it.panel.name.clone()),
        Column::Number("Number", |it| Some(f64::from(it.mark.number))),
        Column::Text("Mark", |it| it.mark.name.clone()),
        Column::Length("From left edge", Kind::OnTheTable, |it| {
            it.mark.from_left.as_ref()
        }),
        Column::Length("From centre", Kind::OnTheTable, |it| {
            it.mark.from_centre.as_ref()
        }),
        Column::Length("Down", Kind::OnTheTable, |it| it.mark.down.as_ref()),
        Column::Length("Depth", Kind::OnTheTable, depth),
        Column::Text("Toward", |it| {
            let fold = it.mark.fold.as_ref();
            fold.map(|fold| fold.toward.to_string()).unwrap_or_default()
        }),
        Column::Length("Brought to, from left edge", Kind::OnTheTable, |it| {
            it.mark.fold.as_ref().map(|fold| &fold.brought_to_from_left)
        }),
        Column::Length("Stitched to, from left edge", Kind::OnTheTable, |it| {
            let stitch = it.mark.stitch.as_ref();
            stitch.map(|stitch| &stitch.other_from_left)
        }),
        Column::Length("Left between", Kind::OnTheTable, |it| {
            it.mark.stitch.as_ref().map(|stitch| &stitch.leaves)
        }),
        Column::Length("Drawn up to", Kind::OnTheTable, |it| {
            it.mark.gather.as_ref().map(|gather| &gather.drawn_to)
        }),
    ]
}

pub(super) fn sheet(packet: &Packet) -> Sheet {
    let panels = packet.windows.iter().flat_map(|window| {
        let panels = window.panels.iter();
        panels.map(move |panel| (window, panel))
    });
    let marks = panels.flat_map(|(window, panel)| {
        let marks = panel.marks.iter();
        marks.map(move |mark| Marked {
            window,
            panel,
            mark,
        })
    });
    let marks: Vec<Marked<'_>> = marks.collect();
    table("marks", packet.units.system, &columns(), &marks)
}

fn depth<'a>(it: &'a Marked<'_>) -> Option<&'a Measure> {
    let fold = it.mark.fold.as_ref().map(|fold| &fold.depth);
    fold.or(it.mark.stitch.as_ref().map(|stitch| &stitch.depth))
}
