//! The notions of the whole job.

use std::collections::BTreeMap;

use pelmet_measure::{Length, Money, Ratio};
use pelmet_model::{Job, NeedExtent, NotionKind, NotionOrder, NotionPrice};
use pelmet_packet::{Extent, Notion, NotionPart};

use super::hung_panel::HungPanel;
use super::price::{self, Reckoning, money};
use super::printer::Printer;

/// Every notion, with what each kind of panel needs of it.
pub(crate) fn notions(panels: &[HungPanel<'_>], job: &Job, printer: &Printer<'_>) -> Vec<Notion> {
    let bought = bought(panels, job);
    bought.iter().map(|bought| bought.notion(printer)).collect()
}

/// Every notion as it is bought, in the order of the packet.
pub(crate) fn bought<'a>(panels: &'a [HungPanel<'a>], job: &'a Job) -> Vec<Bought<'a>> {
    let mut parts: BTreeMap<Kept<'a>, Vec<Part<'a>>> = BTreeMap::new();
    for panel in panels {
        for need in &panel.made.needs {
            let sold = NotionOrder::named(&job.notions, &need.name);
            let kept = Kept {
                kind: need.kind,
                name: &need.name,
                width: need.width,
                roll: need.roll.or(sold.and_then(|sold| sold.roll)),
            };
            let extent = need.extent;
            parts.entry(kept).or_default().push(Part { panel, extent });
        }
    }
    parts
        .into_iter()
        .map(|(kept, parts)| Bought {
            sold: NotionOrder::named(&job.notions, kept.name),
            kept,
            parts,
        })
        .collect()
}

/// A notion as it is bought for the whole job.
pub(crate) struct Bought<'a> {
    kept: Kept<'a>,
    sold: Option<&'a NotionOrder>,
    parts: Vec<Part<'a>>,
}

/// What is bought as one.
#[derive(PartialEq, Eq, PartialOrd, Ord)]
struct Kept<'a> {
    kind: NotionKind,
    name: &'a str,
    width: Option<Length>,
    roll: Option<Length>,
}

/// What one kind of panel needs of a notion.
struct Part<'a> {
    panel: &'a HungPanel<'a>,
    extent: NeedExtent,
}

impl Bought<'_> {
    /// What it is called on a sheet.
    pub(crate) fn name(&self) -> String {
        match self.kept.kind {
            NotionKind::FusibleTape => String::from("fusible tape"),
            NotionKind::Fastener | NotionKind::Thread | NotionKind::Rings | NotionKind::Weights => {
                self.kept.name.to_owned()
            }
        }
    }

    /// How the cost of what is bought comes about; `None` without a price, or with one for something
    /// else.
    pub(crate) fn reckoning(&self, printer: &Printer<'_>) -> Option<Reckoning> {
        let of_count = |count: Option<u32>, unit: &str, amount: &Ratio| {
            Some(Reckoning::of_count(count?, unit, *amount))
        };
        match self.sold?.price.as_ref()? {
            NotionPrice::PerLength(price) => {
                price::reckoning(price, self.length_bought(printer)?, printer)
            }
            NotionPrice::PerRoll(amount) => of_count(self.rolls(), "roll", amount),
            NotionPrice::PerPack(amount) => of_count(self.packs(), "pack", amount),
            NotionPrice::Each(amount) => of_count(self.count_bought(), "piece", amount),
        }
    }

    fn cost(&self, printer: &Printer<'_>) -> Option<Money> {
        self.reckoning(printer)?.cost()
    }

    fn notion(&self, printer: &Printer<'_>) -> Notion {
        let parts = self.parts.iter().map(|part| part.told(printer));
        Notion {
            kind: self.kept.kind,
            name: self.name(),
            width: self.kept.width.map(|width| printer.plain(width)),
            parts: parts.collect(),
            exact: told(self.exact(), printer),
            bought: self.told_as_bought(printer),
            roll: self.kept.roll.map(|roll| printer.roll(roll)),
            rolls: self.rolls(),
            pack: self.pack(),
            packs: self.packs(),
            price: self
                .sold
                .and_then(|sold| sold.price.as_ref())
                .map(|price| price_in_words(price, printer)),
            cost: self.cost(printer).map(|cost| printer.amount(cost)),
        }
    }

    /// The sum of its parts.
    fn exact(&self) -> NeedExtent {
        let mut length = Length::ZERO;
        let mut count = 0_u32;
        for part in &self.parts {
            match part.together() {
                NeedExtent::Length(more) => length += more,
                NeedExtent::Count(more) => count = count.saturating_add(more),
            }
        }
        match self.kept.kind {
            NotionKind::Rings | NotionKind::Weights => NeedExtent::Count(count),
            NotionKind::FusibleTape | NotionKind::Fastener | NotionKind::Thread => {
                NeedExtent::Length(length)
            }
        }
    }

    /// How much of it is bought, in words.
    pub(crate) fn amount_bought(&self, printer: &Printer<'_>) -> String {
        self.told_as_bought(printer).text
    }

    fn told_as_bought(&self, printer: &Printer<'_>) -> Extent {
        if let Some(length) = self.length_bought(printer) {
            let length = printer.bought(length);
            return Extent {
                text: length.text.clone(),
                length: Some(length),
                count: None,
            };
        }
        told(NeedExtent::Count(self.count_bought().unwrap_or(0)), printer)
    }

    fn length_bought(&self, printer: &Printer<'_>) -> Option<Length> {
        let NeedExtent::Length(exact) = self.exact() else {
            return None;
        };
        let by_length = exact.round_up_to(printer.style.buying_step());
        let in_rolls = self.kept.roll.zip(self.rolls());
        Some(in_rolls.map_or(by_length, |(roll, rolls)| repeated(roll, rolls)))
    }

    fn count_bought(&self) -> Option<u32> {
        let NeedExtent::Count(exact) = self.exact() else {
            return None;
        };
        let in_packs = self.pack().zip(self.packs());
        Some(in_packs.map_or(exact, |(pack, packs)| pack.saturating_mul(packs)))
    }

    /// How many rolls hold what is needed; `None` for a roll without length.
    fn rolls(&self) -> Option<u32> {
        let (NeedExtent::Length(exact), Some(roll)) = (self.exact(), self.kept.roll) else {
            return None;
        };
        let rolls = exact.round_up_to(roll).ratio_to(roll)?;
        u32::try_from(rolls.to_integer()).ok()
    }

    fn pack(&self) -> Option<u32> {
        self.sold?.pack
    }

    fn packs(&self) -> Option<u32> {
        let NeedExtent::Count(exact) = self.exact() else {
            return None;
        };
        Some(exact.div_ceil(self.pack().filter(|pack| *pack > 0)?))
    }
}

impl Part<'_> {
    fn together(&self) -> NeedExtent {
        let quantity = self.panel.made.quantity;
        match self.extent {
            NeedExtent::Length(length) => NeedExtent::Length(repeated(length, quantity)),
            NeedExtent::Count(count) => NeedExtent::Count(count.saturating_mul(quantity)),
        }
    }

    fn told(&self, printer: &Printer<'_>) -> NotionPart {
        NotionPart {
            window: self.panel.window_name.to_owned(),
            panel: self.panel.order.name.clone(),
            quantity: self.panel.made.quantity,
            each: told(self.extent, printer),
            together: told(self.together(), printer),
        }
    }
}

fn told(extent: NeedExtent, printer: &Printer<'_>) -> Extent {
    match extent {
        NeedExtent::Length(length) => {
            let length = printer.cut(length);
            Extent {
                text: length.text.clone(),
                length: Some(length),
                count: None,
            }
        }
        NeedExtent::Count(count) => Extent {
            text: count.to_string(),
            length: None,
            count: Some(count),
        },
    }
}

fn price_in_words(price: &NotionPrice, printer: &Printer<'_>) -> String {
    let (amount, unit) = match price {
        NotionPrice::PerLength(price) => return price::price(price, printer).text,
        NotionPrice::PerRoll(amount) => (amount, "per roll"),
        NotionPrice::PerPack(amount) => (amount, "per pack"),
        NotionPrice::Each(amount) => (amount, "each"),
    };
    format!("{} {unit}", printer.amount(money(*amount)).text)
}

/// So many times a length.
fn repeated(length: Length, times: u32) -> Length {
    length * i64::from(times)
}
