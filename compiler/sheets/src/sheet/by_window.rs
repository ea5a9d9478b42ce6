//! The parts of a sheet: one for each window, with its panels in order.

use pelmet_packet::{Packet, Panel, Window};

use crate::content::SheetBlocks;

/// Heads a part for each window and prints it.
pub(crate) fn each_window(
    packet: &Packet,
    sheet: &mut SheetBlocks,
    print: impl Fn(&Window, &mut SheetBlocks),
) {
    for window in &packet.windows {
        sheet.heading(&format!("Window {}", window.name));
        print(window, sheet);
    }
}

/// Heads a part for each window and prints its panels.
pub(crate) fn each_panel(
    packet: &Packet,
    sheet: &mut SheetBlocks,
    print: impl Fn(&Panel, &mut SheetBlocks),
) {
    each_window(packet, sheet, |window, sheet| {
        for panel in &window.panels {
            print(panel, sheet);
        }
    });
}
