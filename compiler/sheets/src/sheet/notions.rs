//! Tape and fasteners: what to buy, and every run of tape from corner to corner.

use pelmet_packet::{Notion, Packet, Panel, Window};

use crate::content::{SheetBlocks, TextColumn, TextTable};
use crate::text::words::counted_of;

pub(crate) fn print(packet: &Packet, sheet: &mut SheetBlocks) {
    if packet.notions.is_empty() {
        sheet.paragraph("Nothing is needed beside cloth.");
        return;
    }
    sheet.table(&buy_list(packet));
    for notion in &packet.notions {
        sheet.heading(&called(notion));
        sheet.table(&parts(notion));
    }
    for window in &packet.windows {
        for panel in window.panels.iter().filter(|panel| !panel.tape.is_empty()) {
            print_runs(window, panel, sheet);
        }
    }
}

fn buy_list(packet: &Packet) -> TextTable {
    let mut table = TextTable::new([
        TextColumn::text("Notion"),
        TextColumn::text("Buy"),
        TextColumn::text("Exact"),
        TextColumn::text("Price"),
        TextColumn::count("Cost"),
    ]);
    for notion in &packet.notions {
        table.row([
            called(notion),
            to_buy(notion),
            notion.exact.text.clone(),
            notion.price.clone().unwrap_or_default(),
            notion
                .cost
                .as_ref()
                .map(|cost| cost.text.clone())
                .unwrap_or_default(),
        ]);
    }
    table
}

fn called(notion: &Notion) -> String {
    match &notion.width {
        Some(width) => format!("{}, {} wide", notion.name, width.text),
        None => notion.name.clone(),
    }
}

fn to_buy(notion: &Notion) -> String {
    match (&notion.roll, notion.rolls) {
        (Some(roll), Some(rolls)) => {
            format!("{} of {}", counted_of(rolls, "roll", "rolls"), roll.text)
        }
        _ => match (notion.pack, notion.packs) {
            (Some(pack), Some(packs)) => {
                format!("{} of {pack}", counted_of(packs, "pack", "packs"))
            }
            _ => notion.bought.text.clone(),
        },
    }
}

fn parts(notion: &Notion) -> TextTable {
    let mut table = TextTable::new([
        TextColumn::text("Window"),
        TextColumn::text("Panel"),
        TextColumn::count("Panels"),
        TextColumn::text("Each"),
        TextColumn::text("Together"),
    ]);
    for part in &notion.parts {
        table.row([
            part.window.clone(),
            part.panel.clone(),
            part.quantity.to_string(),
            part.each.text.clone(),
            part.together.text.clone(),
        ]);
    }
    table
}

/// Where the tape of one panel goes. Corners have the numbers of the mark list.
fn print_runs(window: &Window, panel: &Panel, sheet: &mut SheetBlocks) {
    sheet.heading(&format!(
        "{} {}: tape of one panel",
        window.name, panel.name
    ));
    let mut table = TextTable::new([
        TextColumn::count("No"),
        TextColumn::text("Edge"),
        TextColumn::text("From"),
        TextColumn::text("To"),
        TextColumn::text("Length"),
    ]);
    for (number, run) in (1..).zip(&panel.tape) {
        let number: u32 = number;
        table.row([
            number.to_string(),
            run.edge.to_string(),
            corner(run.from_corner),
            corner(run.to_corner),
            run.length.text.clone(),
        ]);
    }
    sheet.table(&table);
    let together = &panel.tape_together.text;
    sheet.paragraph(&match panel.quantity {
        0 | 1 => format!("Together {together}."),
        quantity => format!("Together {together}, for each of {quantity} panels alike."),
    });
    if let Some(strips) = &panel.pleat_strips {
        sheet.paragraph(&format!(
            "And behind its folds {} of {}.",
            counted_of(strips.count, "strip", "strips"),
            strips.length.text
        ));
    }
}

fn corner(number: Option<u32>) -> String {
    number
        .map(|number| format!("corner {number}"))
        .unwrap_or_default()
}
