//! Every piece to cut.

use pelmet_packet::{Packet, Panel, Piece, Window};

use super::Sheet;
use super::column::{Column, Kind, table};

struct Cut<'a> {
    window: &'a Window,
    panel: &'a Panel,
    piece: &'a Piece,
}

fn columns<'a>() -> [Column<Cut<'a>>; 15] {
    [
        Column::Text("Window", |cut| cut.window.name.clone()),
        Column::Text("Panel", |cut| cut.panel.name.clone()),
        Column::Text("Piece", |cut| cut.piece.label.clone()),
        Column::Text("Layer", |cut| cut.piece.layer.to_string()),
        Column::Text("Cloth", |cut| cut.piece.cloth.clone()),
        Column::Number("Quantity", |cut| Some(f64::from(cut.piece.quantity))),
        Column::Length("Cut width", Kind::OnTheTable, |cut| {
            Some(&cut.piece.cut_width)
        }),
        Column::Length("Cut length", Kind::OnTheTable, |cut| {
            Some(&cut.piece.cut_length)
        }),
        Column::Text("On the fold", |cut| yes(cut.piece.on_fold)),
        Column::Length("Draw width", Kind::OnTheTable, |cut| {
            Some(&cut.piece.draw_width)
        }),
        Column::Text("Turned over", |cut| yes(cut.piece.mirrored)),
        Column::Text("Along the cloth", |cut| yes(cut.piece.railroaded)),
        Column::Length("Folded across at", Kind::OnTheTable, |cut| {
            cut.piece.folded_at.as_ref()
        }),
        Column::Text("Area", |cut| cut.piece.area.text.clone()),
        Column::Number("Area (sq m)", |cut| Some(cut.piece.area.square_metres)),
    ]
}

pub(super) fn sheet(packet: &Packet) -> Sheet {
    let panels = packet.windows.iter().flat_map(|window| {
        let panels = window.panels.iter();
        panels.map(move |panel| (window, panel))
    });
    let cuts = panels.flat_map(|(window, panel)| {
        let pieces = panel.pieces.iter();
        pieces.map(move |piece| Cut {
            window,
            panel,
            piece,
        })
    });
    let cuts: Vec<Cut<'_>> = cuts.collect();
    table("cuts", packet.units.system, &columns(), &cuts)
}

fn yes(is: bool) -> String {
    String::from(if is { "yes" } else { "no" })
}
