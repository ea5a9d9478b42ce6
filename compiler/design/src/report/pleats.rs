//! Findings in the pleats.

use pelmet_diagnostics::codes::fold_overruns_edge::KnifeDepth;
use pelmet_diagnostics::codes::pleats_do_not_fit::FittingWidth;
use pelmet_diagnostics::{Diagnostic, PlacedText, codes};
use pelmet_measure::Length;
use pelmet_model::{
    FoldPlace, Layer, PleatKind, PleatMatter, PleatOrder, PleatStep, Start, StepKind,
};

use super::place::PanelPlace;
use crate::{MakingKey, PanelKey};

pub(super) fn report(panel: PanelPlace<'_>, matter: &PleatMatter) -> Diagnostic {
    match *matter {
        PleatMatter::WidthMissing => width_missing(panel),
        PleatMatter::NoFit {
            wanted,
            finished,
            below,
            above,
        } => no_fit(panel, wanted, finished, [below, above]),
        PleatMatter::WidthsContradict {
            flat,
            finished,
            take_up,
            turn,
        } => widths_contradict(panel, [flat, finished, take_up, turn]),
        PleatMatter::TakesTooMuch { flat, taken } => takes_too_much(panel, flat, taken),
        PleatMatter::FoldCrossesCentre {
            step,
            amount,
            fold_at,
            taken_up,
        } => fold_crosses_centre(panel, step, amount, fold_at, taken_up),
        PleatMatter::FoldOverrunsEdge { step, amount } => fold_overruns_edge(panel, step, amount),
        PleatMatter::EdgeInsideFold {
            step,
            fold_at,
            taken_up,
        } => edge_inside_fold(panel, step, fold_at, taken_up),
        PleatMatter::PleatsRunTogether {
            first,
            second,
            ends,
            begins,
        } => run_together(panel, first, second, ends, begins),
        PleatMatter::FoldOnFold {
            step,
            layers,
            intended,
            from,
            to,
        } => fold_on_fold(panel, step, layers, intended, from, to),
        PleatMatter::NoPrintAcross => no_print_across(panel),
        PleatMatter::PrintOutOfReach {
            step,
            times,
            besides,
            repeat,
            below,
            above,
        } => print_out_of_reach(panel, step, times, besides, repeat, below, above),
        PleatMatter::NothingFollowsPrint { step } => nothing_follows_print(panel, step),
        PleatMatter::TurnNotCounted { layer } => turn_not_counted(panel, layer),
        PleatMatter::StripShows {
            step,
            length,
            depth,
        } => strip_shows(panel, step, length, depth),
        PleatMatter::TooManyPleats { step, limit } => too_many_pleats(panel, step, limit),
    }
}

fn no_print_across(panel: PanelPlace<'_>) -> Diagnostic {
    codes::NoPrintAcross {
        panel: panel.name(),
        face: panel.cloth(Layer::Face),
        pleats: panel.span(PanelKey::Pleats),
    }
    .into()
}

fn print_out_of_reach(
    panel: PanelPlace<'_>,
    step: usize,
    times: i64,
    besides: Length,
    repeat: Length,
    below: Option<Length>,
    above: Length,
) -> Diagnostic {
    let nearest = || below.into_iter().chain([above]);
    let sums = nearest().map(|length| {
        format!(
            "{} besides + {times} x {} here = {} from pleat to pleat, in whole repeats of {}",
            panel.text(besides),
            panel.text(length),
            panel.text(besides + length * times),
            panel.text(repeat),
        )
    });
    codes::PrintOutOfReach {
        panel: panel.name(),
        step: panel.pleat_step(step),
        pleats: panel.span(PanelKey::Pleats),
        repeat: panel.text(repeat),
        nearest: nearest().map(|length| panel.exact(length)).collect(),
        sums: sums.collect(),
    }
    .into()
}

fn nothing_follows_print(panel: PanelPlace<'_>, step: usize) -> Diagnostic {
    codes::NothingFollowsPrint {
        panel: panel.name(),
        step: panel.pleat_step(step),
        pleats: panel.span(PanelKey::Pleats),
    }
    .into()
}

fn turn_not_counted(panel: PanelPlace<'_>, layer: Layer) -> Diagnostic {
    codes::TurnOfClothNotCounted {
        panel: panel.name(),
        layer: layer.word(),
        cloth: panel.cloth(layer),
        pleats: panel.span(PanelKey::Pleats),
    }
    .into()
}

fn strip_shows(panel: PanelPlace<'_>, step: usize, length: Length, depth: Length) -> Diagnostic {
    let strips = panel
        .making(MakingKey::PleatStrips)
        .unwrap_or(panel.span(PanelKey::Making));
    codes::StripShows {
        panel: panel.name(),
        length: PlacedText::new(strips, panel.text(length)),
        depth: PlacedText::new(panel.pleat_step(step), panel.text(depth)),
        amount: panel.text(length - depth),
    }
    .into()
}

fn too_many_pleats(panel: PanelPlace<'_>, step: usize, limit: u32) -> Diagnostic {
    codes::TooManyPleats {
        panel: panel.name(),
        step: panel.pleat_step(step),
        pleats: panel.span(PanelKey::Pleats),
        limit,
    }
    .into()
}

fn width_missing(panel: PanelPlace<'_>) -> Diagnostic {
    codes::WidthMissing {
        panel: panel.name(),
        name: panel.place(),
        pleats: panel.span(PanelKey::Pleats),
        example: panel.example(),
    }
    .into()
}

fn no_fit(
    panel: PanelPlace<'_>,
    wanted: Length,
    finished: bool,
    nearest: [Option<(Length, u32)>; 2],
) -> Diagnostic {
    let (wanted_width, stated) = if finished {
        (PanelKey::FinishedWidth, panel.finished_width())
    } else {
        (PanelKey::FlatWidth, panel.flat_width())
    };
    let mut nearest: Vec<(Length, u32)> = nearest.into_iter().flatten().collect();
    nearest.sort_by_key(|(width, _)| (*width - wanted).abs());
    let fitting = nearest.into_iter().map(|(width, pleats)| FittingWidth {
        text: panel.text(width),
        pleats,
        to_write: stated.changed(panel, width - wanted),
    });
    codes::PleatsDoNotFit {
        panel: panel.name(),
        pleats: panel.span(PanelKey::Pleats),
        wanted: PlacedText::new(stated.span, panel.text(wanted)),
        kind: wanted_width.word(),
        property: stated.property.word(),
        fitting: fitting.collect(),
        has_range: has_range(panel),
    }
    .into()
}

/// Whether some plain cloth between the pleats has a range, so that it is only too small.
fn has_range(panel: PanelPlace<'_>) -> bool {
    let rule = panel.order.and_then(|order| order.pleats.as_ref());
    rule.is_some_and(|rule| any_range(&rule.steps))
}

fn any_range(steps: &[PleatStep]) -> bool {
    steps.iter().any(|step| match &step.kind {
        StepKind::Plain(length) => !length.is_fixed(),
        StepKind::Repeat { steps, .. } => any_range(steps),
        StepKind::Pleat(_) | StepKind::Rest => false,
    })
}

fn widths_contradict(
    panel: PanelPlace<'_>,
    [flat, finished, take_up, turn]: [Length; 4],
) -> Diagnostic {
    let difference = flat - finished;
    let (stated_finished, stated_flat) = (panel.finished_width(), panel.flat_width());
    codes::WidthsContradict {
        panel: panel.name(),
        pleats: panel.span(PanelKey::Pleats),
        finished: PlacedText::new(stated_finished.span, panel.text(finished)),
        flat: PlacedText::new(stated_flat.span, panel.text(flat)),
        difference: panel.text(difference),
        take_up: panel.text(take_up),
        turns: turn.is_positive().then(|| panel.text(turn)),
        flat_property: stated_flat.property.word(),
        to_write: stated_flat.changed(panel, take_up - difference),
    }
    .into()
}

fn takes_too_much(panel: PanelPlace<'_>, flat: Length, taken: Length) -> Diagnostic {
    let stated = panel.flat_width();
    let enough = stated.changed(panel, taken - flat);
    codes::PleatsTakeTooMuch {
        panel: panel.name(),
        pleats: panel.span(PanelKey::Pleats),
        flat: PlacedText::new(stated.span, panel.text(flat)),
        taken: panel.text(taken),
        missing: panel.text(taken - flat),
        to_write: enough.map(|enough| format!("{}: {enough}", stated.property.word())),
    }
    .into()
}

fn fold_crosses_centre(
    panel: PanelPlace<'_>,
    step: usize,
    amount: Length,
    fold_at: Length,
    taken_up: Length,
) -> Diagnostic {
    // Measured from the side edge, a fold moves outward by a smaller number.
    let further = farther(panel, step, amount).filter(|_| starts_at_centre(panel));
    codes::FoldCrossesCentre {
        panel: panel.name(),
        step: panel.pleat_step(step),
        pleats: panel.span(PanelKey::Pleats),
        fold_at: panel.text(fold_at),
        taken_up: panel.text(taken_up),
        amount: panel.text(amount),
        further,
    }
    .into()
}

fn fold_overruns_edge(panel: PanelPlace<'_>, step: usize, amount: Length) -> Diagnostic {
    codes::FoldOverrunsEdge {
        panel: panel.name(),
        step: panel.pleat_step(step),
        pleats: panel.span(PanelKey::Pleats),
        amount: panel.text(amount),
        knife: knife_depth(panel, step, amount),
    }
    .into()
}

fn edge_inside_fold(
    panel: PanelPlace<'_>,
    step: usize,
    fold_at: Length,
    taken_up: Length,
) -> Diagnostic {
    codes::EdgeInsideFold {
        panel: panel.name(),
        step: panel.pleat_step(step),
        pleats: panel.span(PanelKey::Pleats),
        fold_at: panel.text(fold_at),
        taken_up: panel.text(taken_up),
        amount: panel.text(taken_up - fold_at),
    }
    .into()
}

fn run_together(
    panel: PanelPlace<'_>,
    first: usize,
    second: usize,
    ends: Length,
    begins: Length,
) -> Diagnostic {
    let amount = ends - begins;
    let start = if starts_at_centre(panel) {
        "centre"
    } else {
        "left edge"
    };
    codes::PleatsRunTogether {
        panel: panel.name(),
        first: panel.pleat_step(first),
        second: panel.pleat_step(second),
        pleats: panel.span(PanelKey::Pleats),
        amount: panel.text(amount),
        start,
        ends: panel.text(ends),
        begins: panel.text(begins),
        further: farther(panel, second, amount),
    }
    .into()
}

fn fold_on_fold(
    panel: PanelPlace<'_>,
    step: usize,
    layers: u32,
    intended: u32,
    from: Length,
    to: Length,
) -> Diagnostic {
    // A warning stands first where the panel is described, since it is accepted there; the rule
    // may be the library's.
    codes::FoldOnFold {
        panel: panel.name(),
        pleats: panel.span(PanelKey::Pleats),
        step: panel.pleat_step(step),
        layers,
        intended,
        from: panel.mark(from),
        to: panel.mark(to),
    }
    .into()
}

/// How to write the place of a fold so much farther on, where it has a place of its own.
fn farther(panel: PanelPlace<'_>, step: usize, by: Length) -> Option<String> {
    match pleat(panel, step)?.place? {
        FoldPlace::At(at) => Some(format!("fold at {}", panel.exact(at + by))),
        FoldPlace::On(on) => Some(format!("fold {} on", panel.exact(on + by))),
    }
}

/// The depth of a knife pleat of one depth, whose fold is `amount` too deep for the cloth beside it.
fn knife_depth(panel: PanelPlace<'_>, step: usize, amount: Length) -> Option<KnifeDepth> {
    let pleat = pleat(panel, step)?;
    let beside = pleat.depth.least - amount;
    let is_knife = pleat.kind == PleatKind::Knife;
    (is_knife && pleat.depth.is_fixed() && beside.is_positive()).then(|| KnifeDepth {
        depth: panel.exact(pleat.depth.least),
        beside: panel.exact(beside),
    })
}

fn starts_at_centre(panel: PanelPlace<'_>) -> bool {
    let rule = panel.order.and_then(|order| order.pleats.as_ref());
    rule.is_some_and(|rule| rule.start == Start::Centre)
}

fn pleat(panel: PanelPlace<'_>, number: usize) -> Option<&PleatOrder> {
    pleat_among(&panel.order?.pleats.as_ref()?.steps, number)
}

fn pleat_among(steps: &[PleatStep], number: usize) -> Option<&PleatOrder> {
    steps.iter().find_map(|step| match &step.kind {
        StepKind::Pleat(pleat) if step.number == number => Some(pleat),
        StepKind::Repeat { steps, .. } => pleat_among(steps, number),
        StepKind::Pleat(_) | StepKind::Plain(_) | StepKind::Rest => None,
    })
}
