//! What a pleat rule says of all its pleats.

use pelmet_measure::Length;
use pelmet_model::{CreaseMade, PleatKind, PleatMake, PleatRule, PleatStep, StepKind, Toward};

use super::laid::{Laid, Size};
use crate::fold::strip::fold;

/// The most layers that lie anywhere in one such pleat: it is folded in the middle of plain cloth, its
/// face wide enough that its two sides stay clear of one another.
pub(crate) fn layers(kind: PleatKind) -> u32 {
    let PleatMake::Folded(pattern) = kind.make() else {
        // What stands out from the panel lies on nothing.
        return 1;
    };
    let depth = Length::INCH;
    let wide = pattern.flat.of(depth, depth * 2);
    let size = Size { depth, face: wide };
    let laid = Laid::folded(kind, &pattern, size, Toward::Left).moved(wide, wide);
    let creases: Vec<CreaseMade> = laid.creases;
    fold(laid.pleat.to + wide, &creases).thickest
}

/// How many creases are pressed into one such pleat: two for each fold. Where stitching or a
/// thread makes the width there are none.
pub(crate) fn pressed_creases(kind: PleatKind) -> i64 {
    match kind.make() {
        PleatMake::Folded(pattern) => i64::try_from(pattern.pressed_creases()).unwrap_or(i64::MAX),
        PleatMake::Stitched { .. } | PleatMake::Drawn => 0,
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
        StepKind::Pleat(order) => layers(order.kind),
        StepKind::Repeat { steps, .. } => most_layers(steps),
        StepKind::Plain(_) | StepKind::Rest => 1,
    });
    layers.max().unwrap_or(1)
}
