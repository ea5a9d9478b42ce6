//! Findings in the outline.

use pelmet_diagnostics::{Diagnostic, PlacedText, codes};
use pelmet_measure::Length;
use pelmet_model::{ArcFault, OutlineLimit, OutlineMatter, OutlineStep};

use super::place::PanelPlace;
use crate::PanelKey;

pub(super) fn report(panel: PanelPlace<'_>, matter: &OutlineMatter) -> Diagnostic {
    match *matter {
        OutlineMatter::NoStart { step } => no_start(panel, step),
        OutlineMatter::NotClosed { step, across, down } => not_closed(panel, step, across, down),
        OutlineMatter::HeadingShort {
            step,
            amount,
            width,
        } => heading_short(panel, step, amount, width),
        OutlineMatter::OutsideSize {
            step,
            amount,
            beyond,
            limit,
        } => outside_size(panel, step, amount, beyond, limit),
        OutlineMatter::ShortOfDrop { amount } => short_of_drop(panel, amount),
        OutlineMatter::CrossesItself { first, second } => crosses_itself(panel, first, second),
        OutlineMatter::TooManyCorners { limit } => {
            codes::too_many_corners(&panel.name(), panel.span(PanelKey::Outline), limit)
        }
        OutlineMatter::NoArc { step, fault } => no_arc(panel, step, fault),
        OutlineMatter::CurveTooTight {
            step,
            radius,
            needed,
        } => curve_too_tight(panel, step, radius, needed),
        OutlineMatter::NoLength { step } => no_length(panel, step),
        OutlineMatter::TooNarrow {
            step,
            width,
            needed,
        } => too_narrow(panel, step, width, needed),
    }
}

fn no_start(panel: PanelPlace<'_>, step: Option<usize>) -> Diagnostic {
    let outline = panel.span(PanelKey::Outline);
    codes::OutlineNotStarted {
        panel: panel.name(),
        step: step.map_or(outline, |step| panel.outline_step(step)),
        outline,
        twice: step.is_some_and(|step| is_from(panel, step)),
    }
    .into()
}

fn not_closed(panel: PanelPlace<'_>, step: usize, across: Length, down: Length) -> Diagnostic {
    codes::OutlineNotClosed {
        panel: panel.name(),
        step: panel.outline_step(step),
        outline: panel.span(PanelKey::Outline),
        across: panel.text(across),
        down: panel.text(down),
    }
    .into()
}

fn heading_short(panel: PanelPlace<'_>, step: usize, amount: Length, width: Length) -> Diagnostic {
    codes::HeadingNotWhole {
        panel: panel.name(),
        step: panel.outline_step(step),
        outline: panel.span(PanelKey::Outline),
        amount: panel.text(amount),
        width: panel.text(width),
        reaches: panel.text(width - amount),
        begins: is_from(panel, step),
    }
    .into()
}

fn crosses_itself(panel: PanelPlace<'_>, first: usize, second: usize) -> Diagnostic {
    codes::OutlineCrossesItself {
        panel: panel.name(),
        first: panel.outline_step(first),
        second: panel.outline_step(second),
        outline: panel.span(PanelKey::Outline),
    }
    .into()
}

fn no_arc(panel: PanelPlace<'_>, step: usize, fault: ArcFault) -> Diagnostic {
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
    codes::ArcImpossible {
        panel: panel.name(),
        step: panel.outline_step(step),
        outline: panel.span(PanelKey::Outline),
        why,
        help,
        sum,
    }
    .into()
}

fn curve_too_tight(
    panel: PanelPlace<'_>,
    step: usize,
    radius: Length,
    needed: Length,
) -> Diagnostic {
    codes::CurveTooTight {
        panel: panel.name(),
        step: panel.outline_step(step),
        outline: panel.span(PanelKey::Outline),
        make: panel.span(PanelKey::Making),
        radius: panel.mark(radius),
        needed: panel.text(needed),
    }
    .into()
}

fn no_length(panel: PanelPlace<'_>, step: usize) -> Diagnostic {
    codes::EdgeWithoutLength {
        panel: panel.name(),
        step: panel.outline_step(step),
        outline: panel.span(PanelKey::Outline),
    }
    .into()
}

fn too_narrow(panel: PanelPlace<'_>, step: usize, width: Length, needed: Length) -> Diagnostic {
    codes::TooNarrowForAllowance {
        panel: panel.name(),
        step: panel.outline_step(step),
        outline: panel.span(PanelKey::Outline),
        make: panel.span(PanelKey::Making),
        width: panel.text(width),
        needed: panel.text(needed),
        missing: panel.text(needed - width),
    }
    .into()
}

fn is_from(panel: PanelPlace<'_>, step: usize) -> bool {
    let step = panel.order.and_then(|order| order.outline.steps.get(step));
    matches!(step, Some(OutlineStep::From { .. }))
}

/// A limit with no size of its own, such as the heading line, has no place either.
fn outside_size(
    panel: PanelPlace<'_>,
    step: usize,
    amount: Length,
    beyond: OutlineLimit,
    limit: Length,
) -> Diagnostic {
    let size = match beyond {
        OutlineLimit::Drop => Some(panel.span(PanelKey::Drop)),
        OutlineLimit::Edge => Some(panel.flat_width().span).filter(|_| limit.is_positive()),
        OutlineLimit::HeadingLine | OutlineLimit::Fold => None,
    };
    let reaches = if limit.is_positive() {
        limit + amount
    } else {
        -amount
    };
    codes::OutlineOutsideSize {
        panel: panel.name(),
        step: panel.outline_step(step),
        outline: panel.span(PanelKey::Outline),
        amount: panel.text(amount),
        side: beyond.word(),
        reaches: panel.text(reaches),
        limit: panel.text(limit),
        size,
    }
    .into()
}

fn short_of_drop(panel: PanelPlace<'_>, amount: Length) -> Diagnostic {
    let drop = panel.order.map_or(Length::ZERO, |order| order.drop);
    codes::OutlineShortOfDrop {
        panel: panel.name(),
        lowest: PlacedText::new(panel.span(PanelKey::Outline), panel.text(drop - amount)),
        drop: panel.placed(PanelKey::Drop, drop),
        amount: panel.text(amount),
    }
    .into()
}
