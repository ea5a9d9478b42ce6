//! Making order: what to do for each panel, step by step, with what to take care of at each.

use std::collections::BTreeSet;

use pelmet_packet::{OrderStep, Packet, Panel};

use crate::content::SheetBlocks;
use crate::sheet::by_window::each_panel;
use crate::sheet::cautions::{in_words, name_in_words};
use crate::text::words::counted_of;

pub(crate) fn print(packet: &Packet, sheet: &mut SheetBlocks) {
    sheet.paragraph(
        "The steps are for one panel; make each of several alike in the same way. Read an order \
        through before you begin, and lay the cut sheet and the mark list beside it: corners have \
        the numbers they have there.",
    );
    each_panel(packet, sheet, |panel, sheet| {
        print_panel(packet, panel, sheet);
    });
}

fn print_panel(packet: &Packet, panel: &Panel, sheet: &mut SheetBlocks) {
    let words = format!(
        "{}, made by {}.",
        counted_of(panel.quantity, "panel", "panels alike"),
        panel.making,
    );
    sheet.panel(&panel.name, &words);
    sheet.blank();
    let mut told = BTreeSet::new();
    for step in &panel.making_order {
        print_step(step, sheet);
        print_cautions(packet, step, &mut told, sheet);
    }
}

/// A caution is told once for a panel, where it first matters, and called to mind later.
fn print_cautions<'p>(
    packet: &Packet,
    step: &'p OrderStep,
    told: &mut BTreeSet<&'p str>,
    sheet: &mut SheetBlocks,
) {
    let mut again = Vec::new();
    for name in &step.cautions {
        let caution = packet.cautions.iter().find(|caution| caution.name == *name);
        match caution {
            Some(caution) if told.insert(name) => {
                sheet.part(&format!("Take care, {}", in_words(caution)));
            }
            _ => again.push(name_in_words(name)),
        }
    }
    if !again.is_empty() {
        sheet.part(&format!("Take care as above: {}.", again.join(", ")));
    }
}

/// The first words of a step stand at its number; what is said for each of several things, below.
fn print_step(step: &OrderStep, sheet: &mut SheetBlocks) {
    let mut words = step.words.iter();
    let first = words.next().map_or("", String::as_str);
    let time = step.time.as_ref().map(|time| format!(", {}", time.text));
    let name = format!("{}{}", step.name, time.unwrap_or_default());
    sheet.numbered(step.number, &format!("{name}: {first}"));
    for words in words {
        sheet.part(words);
    }
}
