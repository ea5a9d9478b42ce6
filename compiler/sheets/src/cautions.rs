//! The cautions of a sheet, at its end.

use pelmet_packet::Packet;
use pelmet_packet::packet::SheetKind;

use crate::page::Page;

pub(crate) fn print(packet: &Packet, kind: SheetKind, page: &mut Page) {
    let mut cautions = packet
        .cautions
        .iter()
        .filter(|caution| caution.sheet == kind)
        .peekable();
    if cautions.peek().is_some() {
        page.heading("Take care");
    }
    for caution in cautions {
        page.item(&format!("{}: {}", caution.about, caution.text));
    }
}
