//! Findings in the pleats.

use pelmet_diagnostics::codes::pleats_do_not_fit::FittingWidth;
use pelmet_diagnostics::{Diagnostic, Span, codes};
use pelmet_measure::Length;
use pelmet_model::{
    FoldPlace, Layer, PleatKind, PleatMatter, PleatOrder, PleatStep, Start, StepKind,
};

use super::place::PanelPlace;

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
        } => fold_crosses_centre(panel, step, amount, [fold_at, taken_up]),
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
        } => run_together(panel, [first, second], [ends, begins]),
        PleatMatter::FoldOnFold {
            step,
            layers,
            intended,
            from,
            to,
        } => fold_on_fold(panel, step, (layers, intended), [from, to]),
        PleatMatter::NoPrintAcross => no_print_across(panel),
        PleatMatter::PrintOutOfReach {
            step,
            times,
            besides,
            repeat,
            below,
            above,
        } => print_out_of_reach(panel, step, (times, besides, repeat), (below, above)),
        PleatMatter::NothingFollowsPrint { step } => nothing_follows_print(panel, step),
        PleatMatter::TurnNotCounted { layer } => turn_not_counted(panel, layer),
        PleatMatter::StripShows {
            step,
            length,
            depth,
        } => strip_shows(panel, step, length, depth),
        PleatMatter::TooManyPleats { step, limit } => {
            codes::too_many_pleats(&panel.name(), places(panel, step), limit)
        }
    }
}

fn no_print_across(panel: PanelPlace<'_>) -> Diagnostic {
    let face = panel.cloth(Layer::Face);
    codes::no_print_across(&panel.name(), face, panel.span("pleats"))
}

fn print_out_of_reach(
    panel: PanelPlace<'_>,
    step: usize,
    (times, besides, repeat): (i64, Length, Length),
    (below, above): (Option<Length>, Length),
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
    let allowed: Vec<String> = nearest().map(|length| panel.exact(length)).collect();
    codes::print_out_of_reach(
        &panel.name(),
        places(panel, step),
        &panel.text(repeat),
        &allowed,
        sums.collect(),
    )
}

fn nothing_follows_print(panel: PanelPlace<'_>, step: usize) -> Diagnostic {
    codes::nothing_follows_print(&panel.name(), places(panel, step))
}

fn turn_not_counted(panel: PanelPlace<'_>, layer: Layer) -> Diagnostic {
    let places = (panel.cloth(layer), panel.span("pleats"));
    codes::turn_of_cloth_not_counted(&panel.name(), layer.word(), places)
}

fn strip_shows(panel: PanelPlace<'_>, step: usize, length: Length, depth: Length) -> Diagnostic {
    let strips = panel.making("pleat strips").unwrap_or(panel.span("make"));
    codes::strip_shows(
        &panel.name(),
        (strips, &panel.text(length)),
        (panel.pleat_step(step), &panel.text(depth)),
        &panel.text(length - depth),
    )
}

fn width_missing(panel: PanelPlace<'_>) -> Diagnostic {
    let places = (panel.place(), panel.span("pleats"));
    codes::width_missing(&panel.name(), places, panel.example())
}

fn no_fit(
    panel: PanelPlace<'_>,
    wanted: Length,
    finished: bool,
    nearest: [Option<(Length, u32)>; 2],
) -> Diagnostic {
    let kind = if finished {
        "finished width"
    } else {
        "flat width"
    };
    let stated = panel.width(kind);
    let mut nearest: Vec<(Length, u32)> = nearest.into_iter().flatten().collect();
    nearest.sort_by_key(|(width, _)| (*width - wanted).abs());
    let fitting = nearest.into_iter().map(|(width, pleats)| FittingWidth {
        text: panel.text(width),
        pleats,
        to_write: stated.changed(panel, width - wanted),
    });
    codes::pleats_do_not_fit(
        &panel.name(),
        (stated.span, panel.span("pleats")),
        (kind, &panel.text(wanted)),
        stated.property,
        &fitting.collect::<Vec<_>>(),
        has_range(panel),
    )
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
    let (stated_finished, stated_flat) = (panel.width("finished width"), panel.width("flat width"));
    let to_write = stated_flat.changed(panel, take_up - difference);
    let turn = turn.is_positive().then(|| panel.text(turn));
    codes::widths_contradict(
        &panel.name(),
        (stated_finished.span, &panel.text(finished)),
        (stated_flat.span, &panel.text(flat)),
        (
            panel.span("pleats"),
            &panel.text(difference),
            &panel.text(take_up),
        ),
        turn.as_deref(),
        to_write
            .as_ref()
            .map(|value| (stated_flat.property, &**value)),
    )
}

fn takes_too_much(panel: PanelPlace<'_>, flat: Length, taken: Length) -> Diagnostic {
    let stated = panel.width("flat width");
    let to_write = stated.changed(panel, taken - flat);
    codes::pleats_take_too_much(
        &panel.name(),
        (stated.span, panel.span("pleats")),
        (
            &panel.text(flat),
            &panel.text(taken),
            &panel.text(taken - flat),
        ),
        to_write.as_ref().map(|value| (stated.property, &**value)),
    )
}

fn fold_crosses_centre(
    panel: PanelPlace<'_>,
    step: usize,
    amount: Length,
    [fold_at, taken_up]: [Length; 2],
) -> Diagnostic {
    // Measured from the side edge, a fold moves outward by a smaller number.
    let further = farther(panel, step, amount).filter(|_| starts_at_centre(panel));
    codes::fold_crosses_centre(
        &panel.name(),
        places(panel, step),
        (
            &panel.text(fold_at),
            &panel.text(taken_up),
            &panel.text(amount),
        ),
        further,
    )
}

fn fold_overruns_edge(panel: PanelPlace<'_>, step: usize, amount: Length) -> Diagnostic {
    let knife = knife_beside(panel, step, amount);
    let knife = knife.as_ref().map(|[depth, beside]| (&**depth, &**beside));
    codes::fold_overruns_edge(
        &panel.name(),
        places(panel, step),
        &panel.text(amount),
        knife,
    )
}

fn edge_inside_fold(
    panel: PanelPlace<'_>,
    step: usize,
    fold_at: Length,
    taken_up: Length,
) -> Diagnostic {
    codes::edge_inside_fold(
        &panel.name(),
        places(panel, step),
        (
            &panel.text(fold_at),
            &panel.text(taken_up),
            &panel.text(taken_up - fold_at),
        ),
    )
}

fn run_together(
    panel: PanelPlace<'_>,
    [first, second]: [usize; 2],
    [ends, begins]: [Length; 2],
) -> Diagnostic {
    let amount = ends - begins;
    let start = if starts_at_centre(panel) {
        "centre"
    } else {
        "left edge"
    };
    let steps = (
        panel.pleat_step(first),
        panel.pleat_step(second),
        panel.span("pleats"),
    );
    let further = farther(panel, second, amount);
    codes::pleats_run_together(
        &panel.name(),
        steps,
        &panel.text(amount),
        (start, &panel.text(ends), &panel.text(begins)),
        further,
    )
}

fn fold_on_fold(
    panel: PanelPlace<'_>,
    step: usize,
    layers: (u32, u32),
    [from, to]: [Length; 2],
) -> Diagnostic {
    // A warning stands first where the panel is described, since it is accepted there; the rule
    // may be the library's.
    let places = (panel.span("pleats"), panel.pleat_step(step));
    codes::fold_on_fold(
        &panel.name(),
        places,
        layers,
        (&panel.mark(from), &panel.mark(to)),
    )
}

/// Where a step was written, and where the panel names its pleats.
fn places(panel: PanelPlace<'_>, step: usize) -> (Span, Span) {
    (panel.pleat_step(step), panel.span("pleats"))
}

/// How to write the place of a fold so much farther on, where it has a place of its own.
fn farther(panel: PanelPlace<'_>, step: usize, by: Length) -> Option<String> {
    match pleat(panel, step)?.place? {
        FoldPlace::At(at) => Some(format!("fold at {}", panel.exact(at + by))),
        FoldPlace::On(on) => Some(format!("fold {} on", panel.exact(on + by))),
    }
}

/// The depth of a knife pleat of one depth, and the cloth beside it where its fold is `amount` too
/// deep.
fn knife_beside(panel: PanelPlace<'_>, step: usize, amount: Length) -> Option<[String; 2]> {
    let pleat = pleat(panel, step)?;
    let beside = pleat.depth.least - amount;
    let is_knife = pleat.kind == PleatKind::Knife;
    (is_knife && pleat.depth.is_fixed() && beside.is_positive())
        .then(|| [panel.exact(pleat.depth.least), panel.exact(beside)])
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
