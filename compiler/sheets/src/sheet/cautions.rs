//! The cautions of a sheet, at its end.

use pelmet_packet::{Caution, Packet, SheetKind};

use crate::content::SheetBlocks;

pub(crate) fn print(packet: &Packet, kind: SheetKind, sheet: &mut SheetBlocks) {
    let mut cautions = of_sheet(packet, kind).peekable();
    if cautions.peek().is_some() {
        sheet.heading("Take care");
    }
    for caution in cautions {
        sheet.item(&in_words(caution));
    }
}

/// The cautions that belong to a sheet as a whole.
pub(crate) fn of_sheet(packet: &Packet, kind: SheetKind) -> impl Iterator<Item = &Caution> {
    let cautions = packet.cautions.iter();
    cautions.filter(move |caution| caution.sheets.contains(&kind))
}

/// A caution by its name, in plain words.
pub(crate) fn in_words(caution: &Caution) -> String {
    format!("{}: {}", name_in_words(&caution.name), caution.text)
}

/// `hot-iron` in plain words.
pub(crate) fn name_in_words(name: &str) -> String {
    name.replace('-', " ")
}
