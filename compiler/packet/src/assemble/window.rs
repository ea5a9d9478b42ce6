//! One window.

use pelmet_workroom::{Job, Support as SupportMade, WindowMade, WindowOrder};

use super::printer::Printer;
use super::{HungPanel, panel, row};
use crate::packet::{Size, Support, SupportKind, Window};

pub(crate) fn window<'a>(
    order: &WindowOrder,
    made: &WindowMade,
    panels: impl Iterator<Item = &'a HungPanel<'a>>,
    job: &Job,
    printer: &Printer<'_>,
) -> Window {
    let panels: Vec<&HungPanel<'_>> = panels.collect();
    Window {
        name: order.name.clone(),
        opening: order.opening.map(|(width, height)| Size {
            width: printer.plain(width),
            length: printer.plain(height),
        }),
        support: support(&order.support, printer),
        top_at: order.top_at.map(|height| printer.plain(height)),
        row: row::row(order, made, &panels, printer),
        panels: panels
            .iter()
            .map(|hung| panel::panel(hung, order, &job.fabrics, printer))
            .collect(),
    }
}

fn support(support: &SupportMade, printer: &Printer<'_>) -> Support {
    let (kind, diameter) = match support {
        SupportMade::Rod(rod) => (SupportKind::Rod, Some(printer.plain(rod.diameter))),
        SupportMade::Board(_) => (SupportKind::Board, None),
    };
    Support {
        kind,
        name: support.name().to_owned(),
        length: printer.plain(support.length()),
        diameter,
        projection: support
            .projection()
            .map(|projection| printer.plain(projection)),
    }
}
