//! Quote: cloth and notions as bought, the work by step, and what is asked.

use pelmet_packet::{Packet, Quote, QuoteKind};

use crate::page::Page;
use crate::table::{Column, Table};

pub(crate) fn print(packet: &Packet, page: &mut Page) {
    let Some(quote) = &packet.quote else {
        page.paragraph("Nothing in this job has a price.");
        return;
    };
    page.table(&lines(quote));
    if !quote.not_priced.is_empty() {
        page.paragraph(&format!(
            "Without a price, and in none of these sums: {}.",
            quote.not_priced.join(", ")
        ));
    }
}

fn lines(quote: &Quote) -> Table {
    let mut table = Table::new([
        Column::text("For"),
        Column::text("What"),
        Column::text("How much"),
        Column::count("Cost"),
    ]);
    for line in &quote.lines {
        table.row([
            kind(line.kind).to_owned(),
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

fn kind(kind: QuoteKind) -> &'static str {
    match kind {
        QuoteKind::Cloth => "cloth",
        QuoteKind::Notion => "notion",
        QuoteKind::Labour => "labour",
    }
}
