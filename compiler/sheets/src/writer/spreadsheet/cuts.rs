//! Every piece to cut.

use pelmet_packet::{Packet, Panel, Piece, Window};

use super::cell_table::{CellTable, TableName};
use super::column::{CellColumn, LengthUse, table};
use crate::parts::every_piece;

struct CutRow<'a> {
    window: &'a Window,
    panel: &'a Panel,
    piece: &'a Piece,
}

fn columns<'a>() -> [CellColumn<CutRow<'a>>; 15] {
    [
        CellColumn::Text("Window", |cut| cut.window.name.clone()),
        CellColumn::Text("Panel", |cut| cut.panel.name.clone()),
        CellColumn::Text("Piece", |cut| cut.piece.label.clone()),
        CellColumn::Text("Layer", |cut| cut.piece.layer.to_string()),
        CellColumn::Text("Cloth", |cut| cut.piece.cloth.clone()),
        CellColumn::Number("Quantity", |cut| Some(f64::from(cut.piece.quantity))),
        CellColumn::Length("Cut width", LengthUse::OnTheTable, |cut| {
            Some(&cut.piece.cut_width)
        }),
        CellColumn::Length("Cut length", LengthUse::OnTheTable, |cut| {
            Some(&cut.piece.cut_length)
        }),
        CellColumn::Text("On the fold", |cut| yes(cut.piece.on_fold)),
        CellColumn::Length("Draw width", LengthUse::OnTheTable, |cut| {
            Some(&cut.piece.draw_width)
        }),
        CellColumn::Text("Turned over", |cut| yes(cut.piece.mirrored)),
        CellColumn::Text("Along the cloth", |cut| yes(cut.piece.railroaded)),
        CellColumn::Length("Folded across at", LengthUse::OnTheTable, |cut| {
            cut.piece.folded_at.as_ref()
        }),
        CellColumn::Text("Area", |cut| cut.piece.area.text.clone()),
        CellColumn::Number("Area (sq m)", |cut| Some(cut.piece.area.square_metres)),
    ]
}

pub(super) fn table_of(packet: &Packet) -> CellTable {
    let cuts = every_piece(packet).map(|(window, panel, piece)| CutRow {
        window,
        panel,
        piece,
    });
    let cuts: Vec<CutRow<'_>> = cuts.collect();
    table(TableName::Cuts, packet.units.system, &columns(), &cuts)
}

fn yes(is: bool) -> String {
    String::from(if is { "yes" } else { "no" })
}
