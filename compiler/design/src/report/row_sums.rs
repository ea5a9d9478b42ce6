//! How the lengths of a row come about, and which width would put it right.

use pelmet_diagnostics::Diagnostic;
use pelmet_measure::Length;
use pelmet_model::{FinishedOrder, WindowOrder};

use super::place::{PanelPlace, WindowPlace};
use crate::{PanelKey, WindowKey};

/// The sum of what there is to cover, and the sum of what the row covers.
pub(super) fn sums(window: WindowPlace<'_>, to_cover: Length, covered: Length) -> [String; 2] {
    [
        format!(
            "{} = {} to cover",
            parts_to_cover(window),
            window.text(to_cover)
        ),
        match parts_of_row(window) {
            Some(parts) => format!("{parts} = {} of panels", window.text(covered)),
            None => format!("the panels of the row, pleated: {}", window.text(covered)),
        },
    ]
}

/// Shows every width that the row adds up.
pub(super) fn label_widths(window: WindowPlace<'_>, diagnostic: Diagnostic) -> Diagnostic {
    let diagnostic = if window.states(WindowKey::Overlap) {
        diagnostic.label(window.span(WindowKey::Overlap), "taken off at every join")
    } else {
        diagnostic
    };
    let diagnostic = if window.states(WindowKey::Returns) {
        diagnostic.label(window.span(WindowKey::Returns), "added at both ends")
    } else {
        diagnostic
    };
    hung(window)
        .into_iter()
        .fold(diagnostic, |diagnostic, (panel, times)| {
            let text = format!("`{}`, {}", panel.own_name(), hangs(times));
            diagnostic.label(panel.finished_width().span, text)
        })
}

/// A line that makes the row so much longer (or shorter, where negative): the first panel whose
/// width was written and divides the change evenly among the places where it hangs.
pub(super) fn other_width(window: WindowPlace<'_>, change: Length) -> Option<String> {
    hung(window).into_iter().find_map(|(panel, times)| {
        let each = change.divided(u32::try_from(times).ok()?);
        let evenly = each * i64::try_from(times).ok()? == change;
        let width = panel
            .stated(PanelKey::FinishedWidth)
            .changed(panel, each)
            .filter(|_| evenly)?;
        Some(format!(
            "`finished width: {width}` for `{}`",
            panel.own_name()
        ))
    })
}

fn parts_to_cover(window: WindowPlace<'_>) -> String {
    let Some(order) = window.order else {
        return String::new();
    };
    let support = format!(
        "the {} `{}` {}",
        window.support_kind().word(),
        order.support.name(),
        window.text(order.support.length())
    );
    if order.returns.is_positive() {
        format!("{support} + 2 returns of {}", window.text(order.returns))
    } else {
        support
    }
}

/// The widths of the row added up; `None` where the pleats of one decide how wide it hangs.
fn parts_of_row(window: WindowPlace<'_>) -> Option<String> {
    let order = window.order?;
    let parts = hung(window).into_iter().map(|(panel, times)| {
        let width = window.text(ordered_width(panel)?);
        let name = panel.own_name();
        Some(if times == 1 {
            format!("`{name}` {width}")
        } else {
            format!("{times} x `{name}` {width}")
        })
    });
    let parts: Option<Vec<String>> = parts.collect();
    Some(format!("{}{}", parts?.join(" + "), overlaps(window, order)))
}

fn overlaps(window: WindowPlace<'_>, order: &WindowOrder) -> String {
    if order.overlap.is_zero() {
        return String::new();
    }
    let joins = order.row.len().saturating_sub(1);
    format!(" - {joins} x {} of overlap", window.text(order.overlap))
}

/// The panels of the row, each once, in the order they first hang, and how often they hang.
fn hung(window: WindowPlace<'_>) -> Vec<(PanelPlace<'_>, usize)> {
    let Some(order) = window.order else {
        return Vec::new();
    };
    let mut times = vec![0_usize; order.panels.len()];
    let mut first_hung = Vec::new();
    for panel in &order.row {
        if let Some(times) = times.get_mut(*panel) {
            if *times == 0 {
                first_hung.push(*panel);
            }
            *times = times.saturating_add(1);
        }
    }
    let counted = first_hung
        .into_iter()
        .map(|panel| (panel, times.get(panel).copied()));
    counted
        .map(|(panel, times)| (window.panel(Some(panel)), times.unwrap_or(0)))
        .collect()
}

fn hangs(times: usize) -> String {
    match times {
        1 => String::from("hangs once"),
        times => format!("hangs {times} times"),
    }
}

/// The width a panel hangs at, where it was written: flat, if nothing is taken up.
fn ordered_width(panel: PanelPlace<'_>) -> Option<Length> {
    let order = panel.order?;
    match order.width.finished {
        Some(FinishedOrder::Exact(width)) => Some(width),
        Some(FinishedOrder::Fill { .. }) => None,
        None => {
            let is_plain = order.pleats.is_none() && order.width.fullness.is_none();
            order.width.flat.filter(|_| is_plain)
        }
    }
}
