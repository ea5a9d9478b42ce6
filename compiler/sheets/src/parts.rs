//! The parts of a sheet: one for each window, with its panels in order.

use pelmet_packet::{Packet, Panel, Window};

use crate::page::Page;

/// Heads a part for each window and prints it.
pub(crate) fn each_window(packet: &Packet, page: &mut Page, print: impl Fn(&Window, &mut Page)) {
    for window in &packet.windows {
        page.heading(&format!("Window {}", window.name));
        print(window, page);
    }
}

/// Heads a part for each window and prints its panels.
pub(crate) fn each_panel(packet: &Packet, page: &mut Page, print: impl Fn(&Panel, &mut Page)) {
    each_window(packet, page, |window, page| {
        for panel in &window.panels {
            print(panel, page);
        }
    });
}
