//! Everything to buy: cloths, then notions.

use pelmet_packet::{Cloth, Notion, Packet, QuoteKind, QuoteLine, Reckoned};

use super::column::{Column, Kind, table};
use super::{Cell, Sheet};

/// What the table is called. Its last column is what each thing costs.
pub(super) const NAME: &str = "buying";

struct Bought<'a> {
    what: What<'a>,
    /// How its cost comes about, and what it is.
    cost: Option<(&'a Reckoned, f64)>,
}

enum What<'a> {
    Cloth(&'a Cloth),
    Notion(&'a Notion),
}

pub(super) fn sheet(packet: &Packet) -> Sheet {
    let lines = packet.quote.iter().flat_map(|quote| &quote.lines);
    let lines: Vec<&QuoteLine> = lines.collect();
    let cost = |kind: QuoteKind, name: &str| {
        let mut lines = lines.iter();
        let line = lines.find(|line| line.kind == kind && line.name == name)?;
        Some((&line.reckoned, line.cost.amount))
    };
    let cloths = packet.cloths.iter().map(|cloth| Bought {
        what: What::Cloth(cloth),
        cost: cost(QuoteKind::Cloth, &cloth.name),
    });
    let notions = packet.notions.iter().map(|notion| Bought {
        what: What::Notion(notion),
        cost: cost(QuoteKind::Notion, &notion.name),
    });
    let bought: Vec<Bought<'_>> = cloths.chain(notions).collect();
    table(NAME, packet.units.system, &columns(packet), &bought)
}

fn columns<'a>(packet: &Packet) -> [Column<Bought<'a>>; 12] {
    let currency = packet.units.currency.as_ref();
    let of_money = |heading: &str| match currency {
        Some(currency) => format!("{heading} ({currency})"),
        None => heading.to_owned(),
    };
    [
        Column::Text("For", |it| String::from(it.what.kind())),
        Column::Text("What", |it| it.what.name().to_owned()),
        Column::Text("Buy", |it| it.what.to_buy().to_owned()),
        Column::Length("Length to buy", Kind::FromTheBolt, |it| match &it.what {
            What::Cloth(cloth) => Some(&cloth.bought),
            What::Notion(notion) => notion.bought.length.as_ref(),
        }),
        Column::Number("Count to buy", |it| match &it.what {
            What::Cloth(_) => None,
            What::Notion(notion) => notion.bought.count.map(f64::from),
        }),
        Column::Length("Exact length", Kind::FromTheBolt, |it| match &it.what {
            What::Cloth(cloth) => Some(&cloth.exact),
            What::Notion(notion) => notion.exact.length.as_ref(),
        }),
        Column::Length("Rule of thumb", Kind::FromTheBolt, |it| {
            it.what.cloth().map(|cloth| &cloth.rule_of_thumb)
        }),
        Column::Length("At least", Kind::FromTheBolt, |it| {
            it.what.cloth().map(|cloth| &cloth.at_least)
        }),
        Column::Number("Quantity", |it| Some(it.cost?.0.quantity)),
        Column::Text("Unit", |it| {
            it.cost.map(|(of, _)| of.unit.clone()).unwrap_or_default()
        }),
        Column::Money(of_money("Price of one unit"), |it| {
            Some(Cell::Money(it.cost?.0.price))
        }),
        Column::Money(of_money("Cost"), |it| Some(Cell::Cost(it.cost?.1))),
    ]
}

impl What<'_> {
    fn kind(&self) -> &'static str {
        match self {
            Self::Cloth(_) => "cloth",
            Self::Notion(_) => "notion",
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
