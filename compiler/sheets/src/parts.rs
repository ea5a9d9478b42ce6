//! Every panel and piece of a packet, each with what it is a part of.

use pelmet_packet::{Packet, Panel, Piece, Window};

/// Every kind of panel with its window, in the order of the packet.
pub(crate) fn every_panel(packet: &Packet) -> impl Iterator<Item = (&Window, &Panel)> {
    packet.windows.iter().flat_map(|window| {
        let panels = window.panels.iter();
        panels.map(move |panel| (window, panel))
    })
}

/// Every kind of piece with its window and panel, in the order of the packet.
pub(crate) fn every_piece(packet: &Packet) -> impl Iterator<Item = (&Window, &Panel, &Piece)> {
    every_panel(packet).flat_map(|(window, panel)| {
        let pieces = panel.pieces.iter();
        pieces.map(move |piece| (window, panel, piece))
    })
}
