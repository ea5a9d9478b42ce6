//! Rod check: what hangs on each rod or board.

use pelmet_packet::Packet;
use pelmet_packet::packet::Window;

use crate::page::Page;
use crate::table::{Column, Table};

pub(crate) fn print(packet: &Packet, page: &mut Page) {
    page.paragraph(
        "Every weight here is an estimate, from the areas of the cut pieces and what their cloths \
        are stated to weigh.",
    );
    for window in &packet.windows {
        page.heading(&format!("Window {}", window.name));
        print_weight(window, page);
    }
    if let Some(weight) = &packet.weight
        && packet.windows.len() > 1
    {
        page.heading("The whole job");
        page.paragraph(&format!("Everything weighs about {}.", weight.text));
    }
}

fn print_weight(window: &Window, page: &mut Page) {
    page.table(&weights(window));
    match &window.weight {
        Some(weight) => page.paragraph(&format!("Together about {}.", weight.text)),
        None => page.paragraph(&format!(
            "What hangs here is not known: no weight is stated for {}.",
            window.cloths_without_weight.join(", ")
        )),
    }
}

fn weights(window: &Window) -> Table {
    let mut table = Table::new([
        Column::text("Panel"),
        Column::count("Panels"),
        Column::text("Each weighs"),
    ]);
    for panel in &window.panels {
        table.row([
            panel.name.clone(),
            panel.quantity.to_string(),
            panel
                .weight
                .as_ref()
                .map(|weight| weight.text.clone())
                .unwrap_or_default(),
        ]);
    }
    table
}
