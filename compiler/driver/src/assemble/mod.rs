//! From the sums of a job to its packet: nothing is worked out twice, only named and printed.

mod arc;
mod band;
mod cautions;
mod cloth;
mod count;
mod folded;
mod heading;
mod hung_panel;
mod making_order;
mod mark;
mod mitre;
mod notion;
mod outline;
mod panel;
mod piece;
mod placed_piece;
mod pleat;
mod price;
mod print_followed;
mod printer;
mod quote;
mod remark;
mod rod_check;
mod row;
mod sections;
mod window;

use pelmet_diagnostics::Diagnostic;
use pelmet_measure::{Mass, Style, System};
use pelmet_model::{Job, Work};
use pelmet_packet::{ExpectationMet, FORMAT, Packet, SystemOfUnits, Units, Window};

use crate::layout::LaidCloth;
use crate::sequence::window_order;
pub(crate) use cloth::{pieces_along, print_repeat};
use hung_panel::hung_panels;
pub(crate) use price::cost;
pub(crate) use printer::Printer;
pub(crate) use quote::{Asked, quoted};

/// Everything a packet is assembled from.
pub struct Parts<'a> {
    /// The title of the job.
    pub title: &'a str,
    /// How lengths are printed.
    pub style: Style,
    /// The currency prices are stated in.
    pub currency: Option<&'a str>,
    /// What was ordered.
    pub job: &'a Job,
    /// What the sums answered.
    pub work: &'a Work,
    /// Every cloth that something is cut from, laid out.
    pub laid: &'a [LaidCloth],
    /// What was found on the way; errors have no place here.
    pub diagnostics: &'a [Diagnostic],
    /// What the design expects of itself and how it came out.
    pub expectations: Vec<ExpectationMet>,
}

/// Assembles the packet of a job; `None` where the sums left a panel out, since a packet that
/// lacks a panel would be cut from all the same.
pub fn assemble(parts: Parts<'_>) -> Option<Packet> {
    let printer = Printer {
        style: parts.style,
        currency: parts.currency,
    };
    let panels = hung_panels(parts.job, parts.work)?;
    let windows = window_order(parts.job).into_iter();
    let windows: Vec<Window> = windows
        .filter_map(|index| {
            let order = parts.job.windows.get(index)?;
            let made = parts.work.windows.get(index)?;
            let panels = panels.iter().filter(|panel| panel.window == index);
            Some(window::window(order, made, panels, parts.job, &printer))
        })
        .collect();
    Some(Packet {
        format: String::from(FORMAT),
        title: parts.title.to_owned(),
        units: units(&printer),
        cloths: cloth::cloths(parts.job, parts.laid, &printer),
        cloth_cost: cloth::cost_of_all(parts.job, parts.laid, &printer),
        weight: weight(parts.work).map(|mass| printer.weight(mass)),
        quote: quote::quote(&panels, parts.job, parts.laid, &printer),
        notions: notion::notions(&panels, parts.job, &printer),
        cautions: cautions::cautions(parts.job, &windows),
        windows,
        warnings: remark::warnings(parts.diagnostics),
        notes: remark::notes(parts.diagnostics, &panels, &parts.job.fabrics),
        expectations: parts.expectations,
    })
}

fn units(printer: &Printer<'_>) -> Units {
    let style = printer.style;
    Units {
        system: match style.system {
            System::Inches => SystemOfUnits::Inches,
            System::Metric => SystemOfUnits::Metric,
        },
        cut_to: printer.plain(style.cut_step),
        mark_to: printer.plain(style.mark_step),
        buy_to: printer.bought(style.buying_step()),
        currency: printer.currency.map(str::to_owned),
    }
}

/// What all the windows weigh; `None` where one of them is not known.
pub(crate) fn weight(work: &Work) -> Option<Mass> {
    work.windows.iter().map(|window| window.weight).sum()
}
