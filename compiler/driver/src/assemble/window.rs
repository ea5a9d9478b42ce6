//! One window.

use std::collections::BTreeSet;

use pelmet_model::{Fabric, Job, SupportOrder, WindowMade, WindowOrder};
use pelmet_packet::{Size, Support, Window};

use super::hung_panel::HungPanel;
use super::making_order::Bench;
use super::printer::Printer;
use super::{panel, rod_check, row};

pub(crate) fn window<'a>(
    order: &WindowOrder,
    made: &WindowMade,
    panels: impl Iterator<Item = &'a HungPanel<'a>>,
    job: &Job,
    printer: &Printer<'_>,
) -> Window {
    let panels: Vec<&HungPanel<'_>> = panels.collect();
    let checked = match &order.support {
        SupportOrder::Rod(rod) => made.rod_check.map(|checked| (rod, checked)),
        SupportOrder::Board(_) => None,
    };
    Window {
        name: order.name.clone(),
        opening: order.opening.map(|(width, height)| Size {
            width: printer.plain(width),
            length: printer.plain(height),
        }),
        public_room: order.public_room,
        support: support(&order.support, printer),
        top_at: order.top_at.map(|height| printer.plain(height)),
        row: row::row(order, made, &panels, printer),
        panels: panels
            .iter()
            .map(|hung| {
                panel::panel(Bench {
                    hung,
                    window: order,
                    joins: &made.joins,
                    fabrics: &job.fabrics,
                    printer,
                })
            })
            .collect(),
        weight: made.weight.map(|mass| printer.weight(mass)),
        cloths_without_weight: without_weight(&panels, &job.fabrics),
        rod_check: checked
            .and_then(|(rod, checked)| Some(rod_check::rod_check(rod, &checked.ok()?, printer))),
        rod_not_checked: checked
            .and_then(|(rod, checked)| Some(rod_check::not_checked(rod, checked.err()?))),
    }
}

/// The cloths that keep the weight from being known, by name.
fn without_weight(panels: &[&HungPanel<'_>], fabrics: &[Fabric]) -> Vec<String> {
    let pieces = panels.iter().flat_map(|hung| &hung.made.pieces);
    let cloths = pieces.filter_map(|piece| fabrics.get(piece.fabric));
    let names: BTreeSet<&str> = cloths
        .filter(|cloth| pelmet_workroom::mass_per_area(cloth).is_none())
        .map(|cloth| &*cloth.name)
        .collect();
    names.into_iter().map(str::to_owned).collect()
}

fn support(support: &SupportOrder, printer: &Printer<'_>) -> Support {
    let diameter = match support {
        SupportOrder::Rod(rod) => Some(printer.plain(rod.diameter)),
        SupportOrder::Board(_) => None,
    };
    Support {
        kind: support.kind(),
        name: support.name().to_owned(),
        length: printer.plain(support.length()),
        diameter,
        projection: support
            .projection()
            .map(|projection| printer.plain(projection)),
    }
}
