//! What a pleat rule says of all its pleats.

use pelmet_measure::Length;
use pelmet_model::{PleatKind, PleatRule, PleatStep, StepKind};

/// The most layers that lie anywhere in one such pleat: the cloth in front, and each fold with
/// the cloth behind it.
pub(crate) fn layers(kind: &PleatKind) -> u32 {
    match kind {
        PleatKind::Knife { .. }
        | PleatKind::Box { .. }
        | PleatKind::Inverted { .. }
        | PleatKind::Kick
        | PleatKind::Tuck { .. } => 3,
        PleatKind::DoubleBox { .. } => 5,
        // What stands out from the panel lies on nothing.
        PleatKind::Stitched { .. } | PleatKind::Gathered { .. } => 1,
    }
}

/// How many creases are pressed into one such pleat: two for each fold. Where stitching or a
/// thread makes the width there are none.
pub(crate) fn pressed_creases(kind: &PleatKind) -> u32 {
    match kind {
        PleatKind::Knife { .. } => 2,
        PleatKind::Box { .. } | PleatKind::Inverted { .. } | PleatKind::Kick => 4,
        PleatKind::DoubleBox { .. } => 8,
        PleatKind::Tuck { .. } | PleatKind::Stitched { .. } | PleatKind::Gathered { .. } => 0,
    }
}

/// What each pressed crease loses in its turn: an even number of nanometres, half of it on
/// either side of the crease.
pub(crate) fn turn(rule: &PleatRule) -> Length {
    let turn = rule.turn_of_cloth.unwrap_or_default().max(Length::ZERO);
    turn.divided(2) * 2
}

/// The most layers the rule means to lie anywhere: as stated, or else as many as in the
/// deepest of its pleats.
pub fn intended_layers(rule: &PleatRule) -> u32 {
    rule.layers.unwrap_or_else(|| most_layers(&rule.steps))
}

fn most_layers(steps: &[PleatStep]) -> u32 {
    let layers = steps.iter().map(|step| match &step.kind {
        StepKind::Pleat(order) => layers(&order.kind),
        StepKind::Repeat { steps, .. } => most_layers(steps),
        StepKind::Plain(_) | StepKind::Rest => 1,
    });
    layers.max().unwrap_or(1)
}
