//! Everything to buy: cloths, then notions.

use pelmet_packet::{Cloth, Notion, Packet, QuoteKind, QuoteLine, Reckoned};

use super::cell_table::{Cell, CellTable, TableName};
use super::column::{CellColumn, LengthUse, table};
use crate::text::words::quote_kind;

struct BoughtRow<'a> {
    what: BoughtThing<'a>,
    /// How its cost comes about, and what it is.
    cost: Option<(&'a Reckoned, f64)>,
}

enum BoughtThing<'a> {
    Cloth(&'a Cloth),
    Notion(&'a Notion),
}

pub(super) fn table_of(packet: &Packet) -> CellTable {
    let lines = packet.quote.iter().flat_map(|quote| &quote.lines);
    let lines: Vec<&QuoteLine> = lines.collect();
    let cost = |kind: QuoteKind, name: &str| {
        let mut lines = lines.iter();
        let line = lines.find(|line| line.kind == kind && line.name == name)?;
        Some((&line.reckoned, line.cost.amount))
    };
    let cloths = packet.cloths.iter().map(BoughtThing::Cloth);
    let notions = packet.notions.iter().map(BoughtThing::Notion);
    let rows = cloths.chain(notions).map(|what| BoughtRow {
        cost: cost(what.kind(), what.name()),
        what,
    });
    let bought: Vec<BoughtRow<'_>> = rows.collect();
    table(
        TableName::Buying,
        packet.units.system,
        &columns(packet),
        &bought,
    )
}

fn columns<'a>(packet: &Packet) -> [CellColumn<BoughtRow<'a>>; 12] {
    let currency = packet.units.currency.as_ref();
    let of_money = |heading: &str| match currency {
        Some(currency) => format!("{heading} ({currency})"),
        None => heading.to_owned(),
    };
    [
        CellColumn::Text("For", |it| String::from(quote_kind(it.what.kind()))),
        CellColumn::Text("What", |it| it.what.name().to_owned()),
        CellColumn::Text("Buy", |it| it.what.to_buy().to_owned()),
        CellColumn::Length("Length to buy", LengthUse::FromTheBolt, |it| {
            match &it.what {
                BoughtThing::Cloth(cloth) => Some(&cloth.bought),
                BoughtThing::Notion(notion) => notion.bought.length.as_ref(),
            }
        }),
        CellColumn::Number("Count to buy", |it| match &it.what {
            BoughtThing::Cloth(_) => None,
            BoughtThing::Notion(notion) => notion.bought.count.map(f64::from),
        }),
        CellColumn::Length("Exact length", LengthUse::FromTheBolt, |it| {
            match &it.what {
                BoughtThing::Cloth(cloth) => Some(&cloth.exact),
                BoughtThing::Notion(notion) => notion.exact.length.as_ref(),
            }
        }),
        CellColumn::Length("Rule of thumb", LengthUse::FromTheBolt, |it| {
            it.what.cloth().map(|cloth| &cloth.rule_of_thumb)
        }),
        CellColumn::Length("At least", LengthUse::FromTheBolt, |it| {
            it.what.cloth().map(|cloth| &cloth.at_least)
        }),
        CellColumn::Number("Quantity", |it| Some(it.cost?.0.quantity)),
        CellColumn::Text("Unit", |it| {
            it.cost.map(|(of, _)| of.unit.clone()).unwrap_or_default()
        }),
        CellColumn::Money(of_money("Price of one unit"), |it| {
            Some(Cell::Money(it.cost?.0.price))
        }),
        CellColumn::Money(of_money("Cost"), |it| Some(Cell::Cost(it.cost?.1))),
    ]
}

impl BoughtThing<'_> {
    fn kind(&self) -> QuoteKind {
        match self {
            Self::Cloth(_) => QuoteKind::Cloth,
            Self::Notion(_) => QuoteKind::Notion,
        }
    }

    fn name(&self) -> &str {
        match self {
            Self::Cloth(cloth) => &cloth.name,
            Self::Notion(notion) => &notion.name,
        }
    }

    fn to_buy(&self) -> &str {
        match self {
            Self::Cloth(cloth) => &cloth.bought.text,
            Self::Notion(notion) => &notion.bought.text,
        }
    }

    fn cloth(&self) -> Option<&Cloth> {
        match self {
            Self::Cloth(cloth) => Some(cloth),
            Self::Notion(_) => None,
        }
    }
}
