//! Elevation: how each window looks from the room, and the sizes of its panels.

use pelmet_packet::{Packet, Panel, Window};

use crate::checks::hangs_from;
use crate::drawing;
use crate::page::Page;
use crate::parts::each_window;
use crate::words::band;

pub(crate) fn print(packet: &Packet, page: &mut Page) {
    each_window(packet, page, print_window);
}

fn print_window(window: &Window, page: &mut Page) {
    page.paragraph(&hangs_from(window));
    page.blank();
    page.drawing(drawing::elevation(window));
    for panel in &window.panels {
        page.item(&format!("{}.", sizes(panel)));
    }
}

/// How wide and long a panel hangs, and its bands.
pub(crate) fn sizes(panel: &Panel) -> String {
    let bands = panel.bands.iter();
    let bands: Vec<String> = bands
        .map(|it| format!(", band {} deep {}", it.depth.text, band(it.edge)))
        .collect();
    format!(
        "{}: {} wide, drop {}{}",
        panel.name,
        panel.finished_width.text,
        panel.drop.text,
        bands.concat()
    )
}
