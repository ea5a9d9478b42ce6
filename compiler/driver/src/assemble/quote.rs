//! What the job costs to make, and what is asked for it.

use std::collections::BTreeMap;

use pelmet_measure::{Money, Quantity, Ratio, number_text};
use pelmet_model::{Job, PanelMade, Work, WorkPer, WorkStep};
use pelmet_packet::{Markup, Quote, QuoteKind, QuoteLine};

use super::count::number;
use super::hung_panel::{HungPanel, hung_panels};
use super::notion::{Bought, bought};
use super::price::{self, Reckoning};
use super::printer::{Printer, quotient};
use crate::layout::LaidCloth;

/// The quote of a job; `None` where nothing in it has a price.
pub(crate) fn quote(
    panels: &[HungPanel<'_>],
    job: &Job,
    laid: &[LaidCloth],
    printer: &Printer<'_>,
) -> Option<Quote> {
    let entries = entries(panels, job, laid, printer);
    let Asked {
        cost,
        markup,
        asked,
    } = asked(&entries, job)?;
    let (priced, not_priced): (Vec<Entry>, Vec<Entry>) = entries
        .into_iter()
        .partition(|entry| entry.cost().is_some());
    Some(Quote {
        lines: priced
            .into_iter()
            .filter_map(|entry| entry.line(printer))
            .collect(),
        cost: printer.amount(cost),
        markup: markup.map(|(part, amount)| Markup {
            percent: percent(part),
            part: quotient(part),
            amount: printer.amount(amount),
        }),
        total: printer.amount(asked),
        not_priced: not_priced.into_iter().map(|entry| entry.name).collect(),
    })
}

/// What a job comes to in money.
pub(crate) struct Asked {
    /// What it costs to make.
    pub(crate) cost: Money,
    /// What is added to that, by its part.
    markup: Option<(Ratio, Money)>,
    /// What is asked for it.
    pub(crate) asked: Money,
}

/// What a job comes to; `None` where anything in it has no price, or a panel is missing.
pub(crate) fn quoted(
    job: &Job,
    work: &Work,
    laid: &[LaidCloth],
    printer: &Printer<'_>,
) -> Option<Asked> {
    let panels = hung_panels(job, work)?;
    let entries = entries(&panels, job, laid, printer);
    let all_priced = entries.iter().all(|entry| entry.cost().is_some());
    asked(&entries, job).filter(|_| all_priced)
}

fn asked(entries: &[Entry], job: &Job) -> Option<Asked> {
    let mut costs = entries.iter().filter_map(Entry::cost).peekable();
    costs.peek()?;
    let cost: Money = costs.sum();
    let markup = job.markup.map(|part| (part, cost.scaled(part)));
    Some(Asked {
        cost,
        markup,
        asked: cost + markup.map_or(Money::ZERO, |(_, amount)| amount),
    })
}

/// Everything that has a price or should have one.
fn entries(
    panels: &[HungPanel<'_>],
    job: &Job,
    laid: &[LaidCloth],
    printer: &Printer<'_>,
) -> Vec<Entry> {
    let entries = cloths(job, laid, printer).into_iter();
    entries
        .chain(notions(&bought(panels, job), printer))
        .chain(labour(panels, job))
        .collect()
}

/// A line before it is known to have a price.
struct Entry {
    kind: QuoteKind,
    name: String,
    amount: String,
    /// How its cost comes about; nothing without a price.
    reckoning: Option<Reckoning>,
}

impl Entry {
    fn cost(&self) -> Option<Money> {
        self.reckoning.as_ref().and_then(Reckoning::cost)
    }

    fn line(self, printer: &Printer<'_>) -> Option<QuoteLine> {
        let cost = printer.amount(self.cost()?);
        Some(QuoteLine {
            kind: self.kind,
            name: self.name,
            amount: self.amount,
            reckoned: self.reckoning?.told(),
            cost,
        })
    }
}

fn cloths(job: &Job, laid: &[LaidCloth], printer: &Printer<'_>) -> Vec<Entry> {
    let entries = laid.iter().filter_map(|laid| {
        let fabric = job.fabrics.get(laid.to_lay.fabric)?;
        let length = laid.layout.bought;
        Some(Entry {
            kind: QuoteKind::Cloth,
            name: fabric.name.clone(),
            amount: printer.bolt(length).text,
            reckoning: fabric
                .price
                .as_ref()
                .and_then(|price| price::reckoning(price, length, printer)),
        })
    });
    let mut entries: Vec<Entry> = entries.collect();
    entries.sort_by(|one, other| one.name.cmp(&other.name));
    entries
}

fn notions(bought: &[Bought<'_>], printer: &Printer<'_>) -> Vec<Entry> {
    let entries = bought.iter().map(|bought| Entry {
        kind: QuoteKind::Notion,
        name: bought.name(),
        amount: bought.amount_bought(printer),
        reckoning: bought.reckoning(printer),
    });
    entries.collect()
}

/// The work by step, all panels together. Minutes and rate stay exact until they are money.
fn labour(panels: &[HungPanel<'_>], job: &Job) -> Vec<Entry> {
    let mut minutes: BTreeMap<&str, Option<Ratio>> = BTreeMap::new();
    for panel in panels {
        for step in &panel.order.making.work {
            let quantity = Ratio::from_integer(panel.made.quantity.into());
            let so_far = minutes
                .entry(&step.name)
                .or_insert(Some(Ratio::new_raw(0, 1)));
            *so_far =
                so_far.and_then(|sum| add(sum, product(minutes_at(step, panel.made)?, quantity)?));
        }
    }
    let entries = minutes.into_iter().map(|(name, minutes)| Entry {
        kind: QuoteKind::Labour,
        name: name.to_owned(),
        amount: minutes.map_or_else(String::new, in_hours_and_minutes),
        reckoning: wage(minutes, job.labour_per_hour),
    });
    entries.collect()
}

/// The minutes a step of the work takes for one panel.
pub(crate) fn minutes_at(step: &WorkStep, made: &PanelMade) -> Option<Ratio> {
    let times = match step.per {
        WorkPer::Panel => 1,
        WorkPer::Pleat => number(made.pleating.pleats.len()),
    };
    product(step.minutes, Ratio::from_integer(times.into()))
}

fn wage(minutes: Option<Ratio>, per_hour: Option<Ratio>) -> Option<Reckoning> {
    Some(Reckoning {
        quantity: product(minutes?, Ratio::new_raw(1, MINUTES_IN_AN_HOUR))?,
        unit: String::from("h"),
        price: per_hour?,
    })
}

pub(crate) fn in_hours_and_minutes(minutes: Ratio) -> String {
    let whole = minutes.round().to_integer();
    let hours = whole.checked_div(MINUTES_IN_AN_HOUR).unwrap_or(0);
    let rest = whole.checked_rem(MINUTES_IN_AN_HOUR).unwrap_or(0);
    match hours {
        0 => format!("{rest} min"),
        _ => format!("{hours} h {rest} min"),
    }
}

fn percent(part: Ratio) -> String {
    let percent = product(part, Ratio::from_integer(100));
    percent.map_or_else(String::new, |percent| format!("{} %", number_text(percent)))
}

fn product(one: Ratio, other: Ratio) -> Option<Ratio> {
    let product = Quantity::number(one).multiply(Quantity::number(other));
    product.ok().map(|product| product.amount)
}

fn add(one: Ratio, other: Ratio) -> Option<Ratio> {
    let sum = Quantity::number(one).add(Quantity::number(other));
    sum.ok().map(|sum| sum.amount)
}

const MINUTES_IN_AN_HOUR: i128 = 60;
