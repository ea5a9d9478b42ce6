//! Findings in the outline.

use pelmet_diagnostics::{Diagnostic, Span, codes};
use pelmet_measure::Length;
use pelmet_model::{ArcFault, OutlineMatter, OutlineStep};

use super::place::PanelPlace;

pub(super) fn report(panel: PanelPlace<'_>, matter: &OutlineMatter) -> Diagnostic {
    let name = &panel.name();
    let outline = panel.span("outline");
    let step_of = |step| (panel.outline_step(step), outline);
    match *matter {
        OutlineMatter::NoStart { step } => {
            let place = step.map_or(outline, |step| panel.outline_step(step));
            let twice = step.is_some_and(|step| is_from(panel, step));
            codes::outline_not_started(name, (place, outline), twice)
        }
        OutlineMatter::NotClosed { step, across, down } => {
            let end = (&*panel.text(across), &*panel.text(down));
            codes::outline_not_closed(name, step_of(step), end)
        }
        OutlineMatter::HeadingShort {
            step,
            amount,
            width,
        } => {
            let begins = is_from(panel, step);
            let lengths = [amount, width, width - amount].map(|length| panel.text(length));
            let [amount, width, reaches] = lengths.each_ref();
            codes::heading_not_whole(name, step_of(step), (amount, width, reaches), begins)
        }
        OutlineMatter::OutsideSize {
            step,
            amount,
            side,
            limit,
        } => outside_size(panel, step, (amount, side), limit),
        OutlineMatter::ShortOfDrop { amount } => short_of_drop(panel, amount),
        OutlineMatter::CrossesItself { first, second } => {
            let steps = (
                panel.outline_step(first),
                panel.outline_step(second),
                outline,
            );
            codes::outline_crosses_itself(name, steps)
        }
        OutlineMatter::TooManyCorners { limit } => codes::too_many_corners(name, outline, limit),
        OutlineMatter::NoArc { step, fault } => no_arc(panel, step_of(step), fault),
        OutlineMatter::CurveTooTight {
            step,
            radius,
            needed,
        } => {
            let places = (panel.outline_step(step), outline, panel.span("make"));
            codes::curve_too_tight(name, places, (&panel.mark(radius), &panel.text(needed)))
        }
        OutlineMatter::NoLength { step } => codes::edge_without_length(name, step_of(step)),
        OutlineMatter::TooNarrow {
            step,
            width,
            needed,
        } => {
            let lengths = [width, needed, needed - width].map(|length| panel.text(length));
            let [width, needed, missing] = lengths.each_ref();
            let places = (panel.outline_step(step), outline, panel.span("make"));
            codes::too_narrow_for_allowance(name, places, (width, needed, missing))
        }
    }
}

fn no_arc(panel: PanelPlace<'_>, places: (Span, Span), fault: ArcFault) -> Diagnostic {
    let (why, help, sum) = match fault {
        ArcFault::RadiusTooSmall { radius, least } => {
            let chord = panel.mark(least * 2);
            let (radius, least) = (panel.text(radius), panel.at_least(least));
            (
                format!("a radius of {radius} does not reach from end to end"),
                format!("make it at least {least}, or say how far the arc is to `bulge`"),
                Some(format!(
                    "{chord} from end to end / 2 = {least} of radius at the least"
                )),
            )
        }
        ArcFault::ThroughInLine => (
            String::from("the point lies in line with both ends, but not between them"),
            String::from("name a point that lies beside the line from end to end"),
            None,
        ),
        ArcFault::StraightUp => (
            String::from("level at one end, it cannot end straight above or below"),
            String::from("move its end to one side, or say how far the arc is to `bulge`"),
            None,
        ),
    };
    codes::arc_impossible(&panel.name(), places, (&why, &help), sum)
}

fn is_from(panel: PanelPlace<'_>, step: usize) -> bool {
    let step = panel.order.and_then(|order| order.outline.steps.get(step));
    matches!(step, Some(OutlineStep::From { .. }))
}

/// A side with no size beyond it, such as the heading line, has no place of its own.
fn outside_size(
    panel: PanelPlace<'_>,
    step: usize,
    (amount, side): (Length, &str),
    limit: Length,
) -> Diagnostic {
    let size = match side {
        "below the drop" => Some(panel.span("drop")),
        "past the edge" => Some(panel.width("flat width").span).filter(|_| limit.is_positive()),
        _ => None,
    };
    let reaches = if limit.is_positive() {
        limit + amount
    } else {
        -amount
    };
    codes::outline_outside_size(
        &panel.name(),
        (panel.outline_step(step), panel.span("outline")),
        (&panel.text(amount), side),
        (&panel.text(reaches), &panel.text(limit)),
        size,
    )
}

fn short_of_drop(panel: PanelPlace<'_>, amount: Length) -> Diagnostic {
    let drop = panel.order.map_or(Length::ZERO, |order| order.drop);
    codes::outline_short_of_drop(
        &panel.name(),
        panel.span("outline"),
        (panel.span("drop"), &panel.text(drop)),
        (&panel.text(drop - amount), &panel.text(amount)),
    )
}
