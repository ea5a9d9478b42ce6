//! Findings in what a making method asks of a panel.

use num_traits::{CheckedMul, CheckedSub};
use pelmet_diagnostics::codes::lining_and_method_differ::LayerAndMethod;
use pelmet_diagnostics::{Diagnostic, PlacedText, Span, codes};
use pelmet_measure::{Length, Ratio, number_text};
use pelmet_model::{Layer, MakingMatter};

use super::place::PanelPlace;
use crate::{MakingKey, PanelKey};

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
        } => {
            let sum = mitre_sum(panel, across, down, is_curved, has_side);
            mitre_not_square(panel, step, sum)
        }
    }
}

fn layer_mismatch(panel: PanelPlace<'_>, layer: Layer, panel_has: bool) -> Diagnostic {
    let differ = LayerAndMethod {
        panel: panel.name(),
        layer: panel.cloth(layer),
        make: panel.span(PanelKey::Making),
        method: panel.order.map_or("", |order| &order.making.name),
        cloth: panel.face_name().filter(|_| !panel_has),
    };
    match layer {
        Layer::Interlining => codes::InterliningAndMethodDiffer(differ).into(),
        Layer::Band(_) => codes::BandAndMethodDiffer(differ).into(),
        Layer::Face | Layer::Lining => codes::LiningAndMethodDiffer(differ).into(),
    }
}

fn layer_shrinks(panel: PanelPlace<'_>, layer: Layer, face: Ratio, behind: Ratio) -> Diagnostic {
    let more = behind.checked_sub(&face).unwrap_or(behind);
    let drop = panel.order.map_or(Length::ZERO, |order| order.drop);
    codes::LiningShrinksMore {
        panel: panel.name(),
        layer: layer.word(),
        behind: PlacedText::new(panel.cloth(layer), percent(behind)),
        face: PlacedText::new(panel.cloth(Layer::Face), percent(face)),
        more: percent(more),
        drop: panel.text(drop),
        shorter: panel.mark(drop.scaled(more)),
    }
    .into()
}

fn fold_not_level(
    panel: PanelPlace<'_>,
    step: Option<usize>,
    highest: Length,
    lowest: Length,
) -> Diagnostic {
    codes::FoldNotLevel {
        panel: panel.name(),
        edge: outline_place(panel, step),
        lining: making_place(panel, MakingKey::Lining),
        highest: panel.mark(highest),
        lowest: panel.mark(lowest),
        apart: panel.mark(lowest - highest),
        face: panel.face_name().unwrap_or("NAME"),
    }
    .into()
}

fn back_upside_down(panel: PanelPlace<'_>) -> Diagnostic {
    codes::BackUpsideDown {
        panel: panel.name(),
        face: panel.cloth(Layer::Face),
        lining: making_place(panel, MakingKey::Lining),
    }
    .into()
}

fn band_too_deep(panel: PanelPlace<'_>, step: usize, room: Length, needed: Length) -> Diagnostic {
    codes::BandTooDeep {
        panel: panel.name(),
        band: making_place(panel, MakingKey::Band),
        edge: panel.outline_step(step),
        needed: panel.mark(needed),
        room: panel.mark(room),
        missing: panel.mark(needed - room),
    }
    .into()
}

fn band_cannot_follow(panel: PanelPlace<'_>, step: Option<usize>) -> Diagnostic {
    codes::BandCannotFollow {
        panel: panel.name(),
        band: making_place(panel, MakingKey::Band),
        edge: outline_place(panel, step),
    }
    .into()
}

fn mitre_not_square(panel: PanelPlace<'_>, step: Option<usize>, sum: String) -> Diagnostic {
    codes::MitreNotSquare {
        panel: panel.name(),
        edge: outline_place(panel, step),
        corners: making_place(panel, MakingKey::Corners),
        sum,
    }
    .into()
}

/// How the lower edge goes from the corner where it should be mitred.
fn mitre_sum(
    panel: PanelPlace<'_>,
    across: Length,
    down: Length,
    is_curved: bool,
    has_side: bool,
) -> String {
    let (across, down) = (panel.mark(across), panel.mark(down));
    let curve = if is_curved { " along a curve" } else { "" };
    let side = if has_side {
        "from the side"
    } else {
        "straight from the top, without a side,"
    };
    format!("the lower edge goes {side} {across} across and {down} up or down{curve}")
}

/// Where a step of the outline was written, or else the outline.
fn outline_place(panel: PanelPlace<'_>, step: Option<usize>) -> Span {
    step.map_or(panel.span(PanelKey::Outline), |step| {
        panel.outline_step(step)
    })
}

/// Where a line of the making method was written, or else the method was named.
fn making_place(panel: PanelPlace<'_>, key: MakingKey) -> Span {
    panel.making(key).unwrap_or(panel.span(PanelKey::Making))
}

/// A part of a whole in percent: 3/100 is `3`.
fn percent(part: Ratio) -> String {
    number_text(part.checked_mul(&Ratio::from_integer(100)).unwrap_or(part))
}
