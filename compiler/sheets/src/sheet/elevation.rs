//! Elevation: how each window looks from the room, and the sizes of its panels.

use pelmet_packet::{Packet, Window};

use crate::content::SheetBlocks;
use crate::sheet::by_window::each_window;
use crate::sheet::checks::hangs_from;
use crate::text::words::sizes;
use crate::to_scale;

pub(crate) fn print(packet: &Packet, sheet: &mut SheetBlocks) {
    each_window(packet, sheet, print_window);
}

fn print_window(window: &Window, sheet: &mut SheetBlocks) {
    sheet.paragraph(&hangs_from(window));
    sheet.blank();
    sheet.drawing(to_scale::elevation(window));
    for panel in &window.panels {
        sheet.item(&format!("{}.", sizes(panel)));
    }
}
