//! The row of a window, and its sums written out.

use pelmet_measure::Length;
use pelmet_model::{WindowMade, WindowOrder};
use pelmet_packet::{Row, RowPanel};

use super::hung_panel::HungPanel;
use super::printer::Printer;

pub(crate) fn row(
    order: &WindowOrder,
    made: &WindowMade,
    panels: &[&HungPanel<'_>],
    printer: &Printer<'_>,
) -> Row {
    let hung: Vec<&HungPanel<'_>> = order
        .row
        .iter()
        .filter_map(|index| with_index(panels, *index))
        .collect();
    let over_joins = order
        .over_joins
        .iter()
        .filter_map(|index| with_index(panels, *index));
    Row {
        sum: sum(order, made, &hung, printer),
        to_cover_sum: to_cover_sum(order, made, printer),
        panels: hung
            .iter()
            .map(|panel| RowPanel {
                name: panel.order.name.clone(),
                finished_width: printer.mark(panel.made.finished),
            })
            .collect(),
        over_joins: over_joins.map(|panel| panel.order.name.clone()).collect(),
        overlap: printer.plain(order.overlap),
        returns: printer.plain(order.returns),
        to_cover: printer.mark(made.to_cover),
        covered: printer.mark(made.covered),
        spare: printer.mark(made.covered - made.to_cover),
        joins: made.joins.iter().map(|join| printer.mark(*join)).collect(),
    }
}

fn with_index<'a, 'b>(panels: &[&'a HungPanel<'b>], index: usize) -> Option<&'a HungPanel<'b>> {
    panels.iter().copied().find(|panel| panel.index == index)
}

/// The widths from left to right, neighbours of one kind told together: `wing 18 in + 2 x bib
/// 24 in + wing 18 in = 84 in`.
fn sum(
    order: &WindowOrder,
    made: &WindowMade,
    hung: &[&HungPanel<'_>],
    printer: &Printer<'_>,
) -> String {
    let text = |length| printer.style.mark(length);
    let terms: Vec<String> = hung
        .chunk_by(|one, other| one.index == other.index)
        .filter_map(|alike| {
            let panel = alike.first()?;
            let width = format!("{} {}", panel.order.name, text(panel.made.finished));
            Some(if alike.len() == 1 {
                width
            } else {
                format!("{} x {width}", alike.len())
            })
        })
        .collect();
    let overlaps = match made.joins.len() {
        0 => String::new(),
        _ if order.overlap.is_zero() => String::new(),
        1 => format!(" - 1 overlap of {}", text(order.overlap)),
        joins => format!(" - {joins} overlaps of {}", text(order.overlap)),
    };
    format!("{}{overlaps} = {}", terms.join(" + "), text(made.covered))
}

fn to_cover_sum(order: &WindowOrder, made: &WindowMade, printer: &Printer<'_>) -> String {
    let text = |length: Length| printer.style.mark(length);
    let support = format!("{} {}", order.support.name(), text(order.support.length()));
    if order.returns.is_zero() {
        support
    } else {
        format!(
            "{support} + 2 returns of {} = {}",
            text(order.returns),
            text(made.to_cover)
        )
    }
}
