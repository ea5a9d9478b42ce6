//! The pieces a strip is laid from, one after the other, each with the numbers its rule leaves open.

use pelmet_measure::Length;

use crate::{FoldPlace, PleatKind, PleatOrder, PleatRule, PleatStep, Ranged, StepKind};

/// One piece of the strip.
#[derive(Clone, Debug)]
pub(super) struct Piece {
    /// The step that ordered it.
    pub(super) step: usize,
    pub(super) kind: PieceKind,
}

/// What a piece is.
#[derive(Clone, Debug)]
pub(super) enum PieceKind {
    /// Plain cloth.
    Plain(Value),
    /// Plain cloth that takes what is left: this much.
    Rest(Length),
    /// A pleat.
    Pleat(PleatPiece),
}

/// A pleat of a strip.
#[derive(Clone, Debug)]
pub(super) struct PleatPiece {
    pub(super) kind: PleatKind,
    pub(super) place: Option<FoldPlace>,
    pub(super) depth: Value,
    /// `None` for a knife, and for a face that follows the depth.
    pub(super) face: Option<Value>,
}

/// A length that may still move within its range.
#[derive(Copy, Clone, Debug)]
pub(super) struct Value {
    pub(super) range: Ranged<Length>,
    pub(super) now: Length,
    pub(super) role: Role,
    /// How often it counts in the flat width.
    flat: i64,
    /// How often it counts in the finished width.
    finished: i64,
}

/// What a value is the length of.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub(super) enum Role {
    Plain,
    Depth,
    Face,
}

/// The sums a strip of pieces has.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub(super) enum Measure {
    Flat,
    Finished,
    TakeUp,
    /// The finished width of a panel of which only one half is pleated.
    FlatAndFinished,
}

impl Piece {
    /// The piece of a written step at its ideals; `None` for a repeat.
    fn of(step: &PleatStep) -> Option<Self> {
        let kind = match &step.kind {
            StepKind::Plain(range) => PieceKind::Plain(Value::new(*range, Role::Plain, (1, 1))),
            StepKind::Rest => PieceKind::Rest(Length::ZERO),
            StepKind::Pleat(order) => PieceKind::Pleat(PleatPiece::of(order)),
            StepKind::Repeat { .. } => return None,
        };
        Some(Self {
            step: step.number,
            kind,
        })
    }

    pub(super) fn values(&self) -> impl Iterator<Item = &Value> {
        let (one, other) = match &self.kind {
            PieceKind::Plain(plain) => (Some(plain), None),
            PieceKind::Rest(_) => (None, None),
            PieceKind::Pleat(pleat) => (Some(&pleat.depth), pleat.face.as_ref()),
        };
        one.into_iter().chain(other)
    }

    pub(super) fn values_mut(&mut self) -> impl Iterator<Item = &mut Value> {
        let (one, other) = match &mut self.kind {
            PieceKind::Plain(plain) => (Some(plain), None),
            PieceKind::Rest(_) => (None, None),
            PieceKind::Pleat(pleat) => (Some(&mut pleat.depth), pleat.face.as_mut()),
        };
        one.into_iter().chain(other)
    }

    pub(super) fn is_rest(&self) -> bool {
        matches!(self.kind, PieceKind::Rest(_))
    }

    pub(super) fn is_pleat(&self) -> bool {
        matches!(self.kind, PieceKind::Pleat(_))
    }

    pub(super) fn is_placed(&self) -> bool {
        matches!(&self.kind, PieceKind::Pleat(pleat) if pleat.place.is_some())
    }
}

impl PleatPiece {
    /// A pleat's numbers count in the sums as often as its cloth lies there: a knife of depth d
    /// uses 2d, a box 4d and its face, an inverted pleat 2d and its hidden face, of which the
    /// finished width keeps the face less 2d. A face not given is twice the depth.
    fn of(order: &PleatOrder) -> Self {
        let (weights, face) = match &order.kind {
            PleatKind::Knife { .. } => ((2, 0), None),
            PleatKind::Box { face: None } => ((6, 2), None),
            PleatKind::Box { face } => ((4, 0), *face),
            PleatKind::Inverted { face: None } => ((4, 0), None),
            PleatKind::Inverted { face } => ((2, -2), *face),
        };
        Self {
            kind: order.kind.clone(),
            place: order.place,
            depth: Value::new(order.depth, Role::Depth, weights),
            face: face.map(|range| Value::new(range, Role::Face, (1, 1))),
        }
    }

    /// The width of its face, hidden or shown.
    pub(super) fn face(&self) -> Length {
        self.face.map_or(self.depth.now * 2, |face| face.now)
    }
}

impl Value {
    fn new(range: Ranged<Length>, role: Role, (flat, finished): (i64, i64)) -> Self {
        Self {
            range,
            now: range.ideal,
            role,
            flat,
            finished,
        }
    }

    /// How often the value counts in a sum.
    pub(super) fn weight(&self, measure: Measure) -> i64 {
        match measure {
            Measure::Flat => self.flat,
            Measure::Finished => self.finished,
            Measure::TakeUp => self.flat.saturating_sub(self.finished),
            Measure::FlatAndFinished => self.flat.saturating_add(self.finished),
        }
    }

    /// How far it lies from its ideal.
    pub(super) fn departure(&self) -> Length {
        (self.now - self.range.ideal).abs()
    }
}

/// The steps of a rule as they are laid: where a pleat is placed, plain cloth takes what is left
/// behind the last placed one.
pub(super) fn steps_to_lay(rule: &PleatRule) -> Vec<PleatStep> {
    let mut steps = rule.steps.clone();
    let last_placed = steps
        .iter()
        .rposition(|step| has_placed_pleat(std::slice::from_ref(step)));
    let after = steps.iter().skip(last_placed.unwrap_or(0));
    if last_placed.is_some() && !after.into_iter().any(|step| step.kind == StepKind::Rest) {
        let number = steps.last().map_or(0, |step| step.number);
        steps.push(PleatStep {
            number,
            kind: StepKind::Rest,
        });
    }
    steps
}

/// Whether any pleat of these steps says where its fold lies.
pub(super) fn has_placed_pleat(steps: &[PleatStep]) -> bool {
    steps.iter().any(|step| match &step.kind {
        StepKind::Pleat(order) => order.place.is_some(),
        StepKind::Repeat { steps, .. } => has_placed_pleat(steps),
        StepKind::Plain(_) | StepKind::Rest => false,
    })
}

/// Whether these steps come to a width without being told one.
pub(super) fn settles_itself(steps: &[PleatStep]) -> bool {
    steps.iter().all(|step| match &step.kind {
        StepKind::Repeat { count, steps } => count.is_fixed() && settles_itself(steps),
        StepKind::Plain(_) | StepKind::Pleat(_) => true,
        StepKind::Rest => false,
    })
}

/// Calls `visit` once for every written step that is a piece, with how many such pieces there are.
/// Repeats must have their counts settled.
pub(super) fn each_written(steps: &[PleatStep], times: i64, visit: &mut dyn FnMut(&Piece, i64)) {
    for step in steps {
        if let StepKind::Repeat { count, steps } = &step.kind {
            let turns = i64::from(count.ideal);
            let (turn, between) = turn_and_between(steps);
            each_written(turn, times.saturating_mul(turns), visit);
            let gaps = turns.saturating_sub(1).max(0);
            each_written(between, times.saturating_mul(gaps), visit);
        } else if let Some(piece) = Piece::of(step) {
            visit(&piece, times);
        }
    }
}

/// All the pieces in working order, at their ideals. Repeats must have their counts settled.
pub(super) fn pieces(steps: &[PleatStep]) -> Vec<Piece> {
    let mut all = Vec::new();
    add_pieces(steps, &mut all);
    all
}

/// A sum over the pieces as they are now, plain cloth that takes what is left not counted.
pub(super) fn sum(pieces: &[Piece], measure: Measure) -> Length {
    let values = pieces.iter().flat_map(Piece::values);
    values.map(|value| value.now * value.weight(measure)).sum()
}

fn add_pieces(steps: &[PleatStep], all: &mut Vec<Piece>) {
    for step in steps {
        if let StepKind::Repeat { count, steps } = &step.kind {
            let (turn, between) = turn_and_between(steps);
            for done in 0..count.ideal {
                if done > 0 {
                    add_pieces(between, all);
                }
                add_pieces(turn, all);
            }
        } else {
            all.extend(Piece::of(step));
        }
    }
}

/// Splits repeated steps into those of every turn and the plain cloth that lies between two turns.
fn turn_and_between(steps: &[PleatStep]) -> (&[PleatStep], &[PleatStep]) {
    let plain = |step: &&PleatStep| matches!(step.kind, StepKind::Plain(_) | StepKind::Rest);
    let between = steps.iter().rev().take_while(plain).count();
    steps
        .split_at_checked(steps.len().saturating_sub(between))
        .unwrap_or((steps, &[]))
}
