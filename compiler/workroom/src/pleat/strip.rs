//! From the written steps of a rule to the pieces of its strip.

use pelmet_measure::Length;
use pelmet_model::{PleatMake, PleatOrder, PleatRule, PleatStep, StepKind};

use super::piece::Piece;
use crate::pleat::rule::turn;

/// The steps of a rule as they are laid.
#[derive(Clone)]
pub(super) struct Steps {
    pub(super) all: Vec<PleatStep>,
    /// What each pressed crease loses in its turn.
    pub(super) turn: Length,
}

/// The steps of a rule as they are laid: where a pleat is placed, plain cloth takes what is left
/// behind the last placed one.
pub(super) fn steps_to_lay(rule: &PleatRule) -> Steps {
    let mut steps = rule.steps.clone();
    let last_placed = steps
        .iter()
        .rposition(|step| has_placed_pleat(std::slice::from_ref(step)));
    if let Some(last_placed) = last_placed
        && !steps
            .iter()
            .skip(last_placed)
            .any(|step| step.kind == StepKind::Rest)
    {
        let number = steps.last().map_or(0, |step| step.number);
        steps.push(PleatStep {
            number,
            kind: StepKind::Rest,
        });
    }
    Steps {
        all: steps,
        turn: turn(rule),
    }
}

/// Whether any pleat of these steps says where its fold lies.
pub(super) fn has_placed_pleat(steps: &[PleatStep]) -> bool {
    steps.iter().any(|step| match &step.kind {
        StepKind::Pleat(order) => order.place.is_some(),
        StepKind::Repeat { steps, .. } => has_placed_pleat(steps),
        StepKind::Plain(_) | StepKind::Rest => false,
    })
}

/// Whether any cloth of these steps is gathered as much as the panel's two widths say.
pub(super) fn has_gathers_by_widths(steps: &[PleatStep]) -> bool {
    steps.iter().any(|step| match &step.kind {
        StepKind::Pleat(order) => is_drawn(order) && order.drawn.ratio.is_none(),
        StepKind::Repeat { steps, .. } => has_gathers_by_widths(steps),
        StepKind::Plain(_) | StepKind::Rest => false,
    })
}

fn is_drawn(order: &PleatOrder) -> bool {
    order.kind.make() == PleatMake::Drawn
}

/// Whether these steps come to a width without being told one.
pub(super) fn settles_itself(steps: &[PleatStep]) -> bool {
    steps.iter().all(|step| match &step.kind {
        StepKind::Repeat { count, steps } => count.is_fixed() && settles_itself(steps),
        StepKind::Pleat(order) => !is_drawn(order) || order.drawn.to.is_some(),
        StepKind::Plain(_) => true,
        StepKind::Rest => false,
    })
}

/// One piece for each written step that is not a repeat, standing for all that the step orders.
/// Repeats must have their counts settled.
pub(super) fn written(steps: &[PleatStep], turn: Length) -> Vec<Piece> {
    let mut all = Vec::new();
    add_written(steps, 1, turn, &mut all);
    all
}

/// All the pieces in working order, from those that stand for each step.
pub(super) fn in_working_order(steps: &[PleatStep], written: &[Piece]) -> Vec<Piece> {
    let mut all = Vec::new();
    add_in_order(steps, written, &mut all);
    all
}

fn add_written(steps: &[PleatStep], times: i64, lost: Length, all: &mut Vec<Piece>) {
    for step in steps {
        if let StepKind::Repeat { count, steps } = &step.kind {
            let turns = i64::from(count.ideal);
            let gaps = turns.saturating_sub(1).max(0);
            let (turn, between) = turn_and_between(steps);
            add_written(turn, times.saturating_mul(turns), lost, all);
            add_written(between, times.saturating_mul(gaps), lost, all);
        } else {
            all.extend(Piece::of(step, times, lost));
        }
    }
}

fn add_in_order(steps: &[PleatStep], mut written: &[Piece], all: &mut Vec<Piece>) {
    for step in steps {
        let (of_step, others) = split(written, count_written(std::slice::from_ref(step)));
        written = others;
        // However often nothing is repeated, nothing is made.
        if of_step.iter().all(|piece| piece.times == 0) {
            continue;
        }
        if let StepKind::Repeat { count, steps } = &step.kind {
            let (turn, between) = turn_and_between(steps);
            let (of_turn, of_between) = split(of_step, count_written(turn));
            for done in 0..count.ideal {
                if done > 0 {
                    add_in_order(between, of_between, all);
                }
                add_in_order(turn, of_turn, all);
            }
        } else {
            all.extend(of_step.iter().map(Piece::one));
        }
    }
}

/// Splits repeated steps into those of every turn and the plain cloth that lies between two turns.
fn turn_and_between(steps: &[PleatStep]) -> (&[PleatStep], &[PleatStep]) {
    let plain = |step: &&PleatStep| matches!(step.kind, StepKind::Plain(_) | StepKind::Rest);
    let between = steps.iter().rev().take_while(plain).count();
    split(steps, steps.len().saturating_sub(between))
}

fn count_written(steps: &[PleatStep]) -> usize {
    let counts = steps.iter().map(|step| match &step.kind {
        StepKind::Repeat { steps, .. } => count_written(steps),
        StepKind::Plain(_) | StepKind::Rest | StepKind::Pleat(_) => 1,
    });
    counts.fold(0, usize::saturating_add)
}

fn split<Item>(items: &[Item], at: usize) -> (&[Item], &[Item]) {
    items.split_at_checked(at).unwrap_or((items, &[]))
}
