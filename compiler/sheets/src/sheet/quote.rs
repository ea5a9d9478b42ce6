//! Quote: cloth and notions as bought, the work by step, and what is asked.

use pelmet_packet::{Packet, Quote};

use crate::content::{SheetBlocks, TextColumn, TextTable};
use crate::text::words::quote_kind;

pub(crate) fn print(packet: &Packet, sheet: &mut SheetBlocks) {
    let Some(quote) = &packet.quote else {
        sheet.paragraph("Nothing in this job has a price.");
        return;
    };
    sheet.table(&lines(quote));
    if !quote.not_priced.is_empty() {
        sheet.paragraph(&format!(
            "Without a price, and in none of these sums: {}.",
            quote.not_priced.join(", ")
        ));
    }
}

fn lines(quote: &Quote) -> TextTable {
    let mut table = TextTable::new([
        TextColumn::text("For"),
        TextColumn::text("What"),
        TextColumn::text("How much"),
        TextColumn::count("Cost"),
    ]);
    for line in &quote.lines {
        table.row([
            quote_kind(line.kind).to_owned(),
            line.name.clone(),
            line.amount.clone(),
            line.cost.text.clone(),
        ]);
    }
    let mut sum = |what: &str, part: &str, amount: &str| {
        table.row([what, "", part, amount].map(str::to_owned));
    };
    if let Some(markup) = &quote.markup {
        sum("cost", "", &quote.cost.text);
        sum("markup", &markup.percent, &markup.amount.text);
    }
    sum("together", "", &quote.total.text);
    table
}
