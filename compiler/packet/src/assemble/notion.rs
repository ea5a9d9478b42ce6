//! Tapes and fasteners of the whole job.

use std::collections::BTreeMap;

use pelmet_measure::Length;

use super::printer::Printer;
use super::{HungPanel, repeated};
use crate::packet::{Notion, NotionKind, NotionPart};

/// Every tape and fastener, with what each kind of panel needs of it.
pub(crate) fn notions(panels: &[HungPanel<'_>], printer: &Printer<'_>) -> Vec<Notion> {
    let mut needs: BTreeMap<Strip, Vec<Need<'_>>> = BTreeMap::new();
    for panel in panels {
        for (strip, each) in strips(panel) {
            needs.entry(strip).or_default().push(Need { panel, each });
        }
    }
    needs
        .iter()
        .map(|(strip, needs)| notion(strip, needs, printer))
        .collect()
}

/// What is bought as one.
#[derive(Clone, PartialEq, Eq, PartialOrd, Ord)]
struct Strip {
    kind: NotionKind,
    name: String,
    width: Length,
    roll: Option<Length>,
}

/// What one panel needs of a strip.
struct Need<'a> {
    panel: &'a HungPanel<'a>,
    each: Length,
}

/// The strips of one panel, each with the length it needs.
fn strips(panel: &HungPanel<'_>) -> Vec<(Strip, Length)> {
    let tape = panel.order.making.tape.iter().map(|tape| {
        let strip = Strip {
            kind: NotionKind::FusibleTape,
            name: String::from("fusible tape"),
            width: tape.width,
            roll: tape.roll,
        };
        (strip, panel.made.tape.iter().map(|run| run.length).sum())
    });
    let fasteners = panel.made.fasteners.iter().map(|run| {
        let (kind, name) = (NotionKind::Fastener, run.name.clone());
        (
            Strip {
                kind,
                name,
                width: run.width,
                roll: None,
            },
            run.length,
        )
    });
    tape.chain(fasteners).collect()
}

fn notion(strip: &Strip, needs: &[Need<'_>], printer: &Printer<'_>) -> Notion {
    let exact: Length = needs.iter().map(Need::together).sum();
    let rolls = strip.roll.and_then(|roll| whole_rolls(exact, roll));
    Notion {
        kind: strip.kind,
        name: strip.name.clone(),
        width: printer.plain(strip.width),
        parts: needs.iter().map(|need| part(need, printer)).collect(),
        exact: printer.cut(exact),
        bought: match (strip.roll, rolls) {
            (Some(roll), Some(rolls)) => printer.bought(repeated(roll, rolls)),
            _ => printer.bought(exact),
        },
        roll: strip.roll.map(|roll| printer.roll(roll)),
        rolls,
    }
}

impl Need<'_> {
    fn together(&self) -> Length {
        repeated(self.each, self.panel.made.quantity)
    }
}

fn part(need: &Need<'_>, printer: &Printer<'_>) -> NotionPart {
    NotionPart {
        window: need.panel.window_name.to_owned(),
        panel: need.panel.order.name.clone(),
        quantity: need.panel.made.quantity,
        each: printer.cut(need.each),
        together: printer.cut(need.together()),
    }
}

/// How many rolls hold that length; `None` for a roll without length.
fn whole_rolls(length: Length, roll: Length) -> Option<u32> {
    let rolls = length.round_up_to(roll).ratio_to(roll)?;
    u32::try_from(rolls.to_integer()).ok()
}
