//! Findings in what a making method asks of a panel.

use num_traits::{CheckedMul, CheckedSub};
use pelmet_diagnostics::{Diagnostic, Span, codes};
use pelmet_measure::{Length, Ratio, number_text};
use pelmet_model::{Layer, MakingMatter};

use super::place::PanelPlace;

pub(super) fn report(panel: PanelPlace<'_>, matter: &MakingMatter) -> Diagnostic {
    match *matter {
        MakingMatter::LayerMismatch { layer, panel_has } => layer_mismatch(panel, layer, panel_has),
        MakingMatter::LayerShrinksMore {
            layer,
            face,
            behind,
        } => layer_shrinks(panel, layer, face, behind),
        MakingMatter::FoldNotLevel {
            step,
            highest,
            lowest,
        } => fold_not_level(panel, step, highest, lowest),
        MakingMatter::BackUpsideDown => back_upside_down(panel),
        MakingMatter::BandTooDeep { step, room, needed } => {
            band_too_deep(panel, step, room, needed)
        }
        MakingMatter::BandCannotFollow { step } => band_cannot_follow(panel, step),
        MakingMatter::MitreNotSquare {
            step,
            across,
            down,
            is_curved,
            has_side,
        } => mitre_not_square(panel, step, (across, down), (is_curved, has_side)),
    }
}

fn layer_mismatch(panel: PanelPlace<'_>, layer: Layer, panel_has: bool) -> Diagnostic {
    let method = panel.order.map_or("", |order| &order.making.name);
    let cloth = panel.face_name().filter(|_| !panel_has);
    let places = (panel.cloth(layer), panel.span("make"));
    let report = match layer {
        Layer::Interlining => codes::interlining_and_method_differ,
        Layer::Band(_) => codes::band_and_method_differ,
        Layer::Face | Layer::Lining => codes::lining_and_method_differ,
    };
    report(&panel.name(), places, method, cloth)
}

fn layer_shrinks(panel: PanelPlace<'_>, layer: Layer, face: Ratio, behind: Ratio) -> Diagnostic {
    let more = behind.checked_sub(&face).unwrap_or(behind);
    let drop = panel.order.map_or(Length::ZERO, |order| order.drop);
    codes::lining_shrinks_more(
        &panel.name(),
        layer.word(),
        (panel.cloth(layer), &percent(behind)),
        (panel.cloth(Layer::Face), &percent(face)),
        (
            &percent(more),
            &panel.text(drop),
            &panel.mark(drop.scaled(more)),
        ),
    )
}

fn fold_not_level(
    panel: PanelPlace<'_>,
    step: Option<usize>,
    highest: Length,
    lowest: Length,
) -> Diagnostic {
    codes::fold_not_level(
        &panel.name(),
        (outline_place(panel, step), making_place(panel, "lining")),
        (
            &panel.mark(highest),
            &panel.mark(lowest),
            &panel.mark(lowest - highest),
        ),
        panel.face_name().unwrap_or("NAME"),
    )
}

fn back_upside_down(panel: PanelPlace<'_>) -> Diagnostic {
    let places = (panel.cloth(Layer::Face), making_place(panel, "lining"));
    codes::back_upside_down(&panel.name(), places)
}

fn band_too_deep(panel: PanelPlace<'_>, step: usize, room: Length, needed: Length) -> Diagnostic {
    codes::band_too_deep(
        &panel.name(),
        (making_place(panel, "band"), panel.outline_step(step)),
        (
            &panel.mark(needed),
            &panel.mark(room),
            &panel.mark(needed - room),
        ),
    )
}

fn band_cannot_follow(panel: PanelPlace<'_>, step: Option<usize>) -> Diagnostic {
    let places = (making_place(panel, "band"), outline_place(panel, step));
    codes::band_cannot_follow(&panel.name(), places)
}

/// Where a step of the outline was written, or else the outline.
fn outline_place(panel: PanelPlace<'_>, step: Option<usize>) -> Span {
    step.map_or(panel.span("outline"), |step| panel.outline_step(step))
}

/// Where a line of the making method was written, or else the method was named.
fn making_place(panel: PanelPlace<'_>, key: &str) -> Span {
    panel.making(key).unwrap_or(panel.span("make"))
}

fn mitre_not_square(
    panel: PanelPlace<'_>,
    step: Option<usize>,
    (across, down): (Length, Length),
    (is_curved, has_side): (bool, bool),
) -> Diagnostic {
    let (edge, corners) = (outline_place(panel, step), making_place(panel, "corners"));
    let (across, down) = (panel.mark(across), panel.mark(down));
    let curve = if is_curved { " along a curve" } else { "" };
    let side = if has_side {
        "from the side"
    } else {
        "straight from the top, without a side,"
    };
    let sum = format!("the lower edge goes {side} {across} across and {down} up or down{curve}");
    codes::mitre_not_square(&panel.name(), edge, corners, &sum)
}

/// A part of a whole in percent: 3/100 is `3`.
fn percent(part: Ratio) -> String {
    number_text(part.checked_mul(&Ratio::from_integer(100)).unwrap_or(part))
}
