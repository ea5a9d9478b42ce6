//! The pieces a strip is laid from, each with the lengths its rule leaves open.

use num_traits::CheckedMul;
use pelmet_measure::{Length, Ratio};
use pelmet_model::{
    CreasePattern, DrawnOrder, FoldPlace, PatternFace, PatternLength, PleatKind, PleatMake,
    PleatOrder, PleatStep, Ranged, StepKind, TowardOrder,
};

use crate::pleat::rule::pressed_creases;

/// One piece of the strip.
#[derive(Clone, Debug)]
pub(super) struct Piece {
    /// The step that ordered it.
    pub(super) step: usize,
    /// How many pieces this one stands for: while the counts are being chosen, one stands for all
    /// that a step orders.
    pub(super) times: i64,
    pub(super) kind: PieceKind,
}

/// What a piece is.
#[derive(Clone, Debug)]
pub(super) enum PieceKind {
    /// Plain cloth.
    Plain(Value),
    /// Plain cloth that takes what is left: this much.
    Rest(Length),
    /// A pleat, with the numbers that are still open in it.
    Pleat(PleatPiece),
}

/// A pleat of a strip.
#[derive(Clone, Debug)]
pub(super) struct PleatPiece {
    pub(super) kind: PleatKind,
    pub(super) toward: TowardOrder,
    pub(super) fingers: u32,
    pub(super) place: Option<FoldPlace>,
    /// What each of its pressed creases loses in its turn.
    pub(super) turn: Length,
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
    /// How many such values it stands for.
    times: i64,
}

/// What a value is the length of.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub(super) enum Role {
    Plain,
    Depth,
    Face,
}

/// The sums a strip of pieces has. What is lost in turns counts as taken up.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub(super) enum Measure {
    Flat,
    Finished,
    TakeUp,
    /// The finished width of a panel of which only one half is pleated.
    FlatAndFinished,
}

impl Piece {
    /// A written step made so many times, at its ideals, each crease losing `turn`; `None` for a
    /// repeat.
    pub(super) fn of(step: &PleatStep, times: i64, turn: Length) -> Option<Self> {
        let kind = match &step.kind {
            StepKind::Plain(range) => {
                PieceKind::Plain(Value::new(*range, Role::Plain, (1, 1), times))
            }
            StepKind::Rest => PieceKind::Rest(Length::ZERO),
            StepKind::Pleat(order) => PieceKind::Pleat(PleatPiece::of(order, times, turn)),
            StepKind::Repeat { .. } => return None,
        };
        Some(Self {
            step: step.number,
            times,
            kind,
        })
    }

    /// One of the pieces this one stands for.
    pub(super) fn one(&self) -> Self {
        let mut one = self.clone();
        one.times = 1;
        for value in one.values_mut() {
            value.times = 1;
        }
        one
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

    /// What its creases lose of a sum, whatever its values are.
    pub(super) fn lost_in_turns(&self, measure: Measure) -> Length {
        match &self.kind {
            PieceKind::Pleat(pleat) if measure != Measure::Finished => {
                let creases = pressed_creases(pleat.kind);
                pleat.turn * creases.saturating_mul(self.times)
            }
            PieceKind::Pleat(_) | PieceKind::Plain(_) | PieceKind::Rest(_) => Length::ZERO,
        }
    }

    /// How often the depth of a pleat counts in its flat cloth.
    pub(super) fn depth_weight(&self) -> i64 {
        match &self.kind {
            PieceKind::Pleat(pleat) => pleat.depth.weight(Measure::Flat),
            PieceKind::Plain(_) | PieceKind::Rest(_) => 1,
        }
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
    /// A pleat's numbers count in the sums as often as its cloth lies there: its pattern says how
    /// much flat cloth it uses and how much of that it takes up. A face not given is twice the depth.
    fn of(order: &PleatOrder, times: i64, turn: Length) -> Self {
        let (depth, face) = match order.kind.make() {
            PleatMake::Folded(pattern) => folded(order, &pattern, times),
            PleatMake::Stitched { .. } => (
                Value::new(order.depth, Role::Depth, (1, 0), times),
                order.face.map(|face| Value::face(face, (1, 1), times)),
            ),
            PleatMake::Drawn => drawn(order.drawn, times),
        };
        Self {
            kind: order.kind,
            toward: order.toward,
            fingers: order.fingers,
            place: order.place,
            turn,
            depth,
            face,
        }
    }

    /// What a gathered run takes up, and what it is drawn up to.
    pub(super) fn gathered(&self) -> (Length, Length) {
        let one = |weight: i64| self.depth.now * weight;
        let finished = self.face.map_or(Length::ZERO, |face| face.now);
        let own = self.depth.finished;
        (
            one(self.depth.flat.saturating_sub(own)),
            one(own) + finished,
        )
    }

    /// The width of its face, hidden or shown.
    pub(super) fn face(&self) -> Length {
        let unsaid = match self.kind.make() {
            PleatMake::Folded(_) => self.depth.now * 2,
            PleatMake::Stitched { .. } | PleatMake::Drawn => Length::ZERO,
        };
        self.face.map_or(unsaid, |face| face.now)
    }
}

/// The depth of a folded pleat, and its face where it moves by itself.
fn folded(order: &PleatOrder, pattern: &CreasePattern, times: i64) -> (Value, Option<Value>) {
    let (flat, finished) = (pattern.flat, pattern.flat.less(pattern.take_up()));
    let face = match pattern.face {
        PatternFace::AsSaid => order.face,
        PatternFace::None | PatternFace::FoldsMeet => None,
    };
    // A face that is twice the depth adds its own cloth to that of the depth.
    let with_face = |length: PatternLength| match face {
        Some(_) => length.depths,
        None => length.depths.saturating_add(length.faces.saturating_mul(2)),
    };
    (
        Value::new(
            order.depth,
            Role::Depth,
            (with_face(flat), with_face(finished)),
            times,
        ),
        face.map(|face| Value::face(face, (flat.faces, finished.faces), times)),
    )
}

/// Cloth drawn up by a ratio is so many parts of flat cloth to so many finished, all of one size;
/// without a ratio what is taken up and what is left are each for the widths to settle.
fn drawn(order: DrawnOrder, times: i64) -> (Value, Option<Value>) {
    let Some(ratio) = order.ratio else {
        let left = Value::face(order.to.unwrap_or(OPEN), (1, 1), times);
        return (Value::new(OPEN, Role::Depth, (1, 0), times), Some(left));
    };
    let (flat, finished) = parts_of(ratio);
    let part = |length: Length| length.divided(u32::try_from(finished).unwrap_or(1));
    let range = order.to.map_or(OPEN, |to| Ranged {
        least: part(to.least),
        ideal: part(to.ideal),
        most: part(to.most),
    });
    (
        Value::new(range, Role::Depth, (flat, finished), times),
        None,
    )
}

/// A length with nothing said of it.
const OPEN: Ranged<Length> = Ranged {
    least: Length::ZERO,
    ideal: Length::ZERO,
    most: Length::LARGEST,
};

/// The most parts a gathered run is counted in, so that rounding one part stays under
/// [`crate::rounding::ROUNDING`].
const MOST_PARTS: i128 = 500;

/// A ratio as whole parts of flat cloth to finished; one that is finer than the parts allow is
/// taken to the nearest of them.
fn parts_of(ratio: Ratio) -> (i64, i64) {
    let fine = *ratio.denom() > MOST_PARTS;
    let scaled = ratio.checked_mul(&Ratio::from_integer(MOST_PARTS));
    let whole = scaled.map(|scaled| *scaled.round().numer());
    let (flat, finished) = match whole {
        Some(flat) if fine => (flat, MOST_PARTS),
        _ => (*ratio.numer(), *ratio.denom()),
    };
    let number = |parts| i64::try_from(parts).unwrap_or(i64::MAX);
    (number(flat), number(finished))
}

impl Value {
    fn new(range: Ranged<Length>, role: Role, (flat, finished): (i64, i64), times: i64) -> Self {
        Self {
            range,
            now: range.ideal,
            role,
            flat,
            finished,
            times,
        }
    }

    /// The width of a face.
    fn face(range: Ranged<Length>, counts: (i64, i64), times: i64) -> Self {
        Self::new(range, Role::Face, counts, times)
    }

    /// How often the value counts in a sum.
    pub(super) fn weight(&self, measure: Measure) -> i64 {
        let once = match measure {
            Measure::Flat => self.flat,
            Measure::Finished => self.finished,
            Measure::TakeUp => self.flat.saturating_sub(self.finished),
            Measure::FlatAndFinished => self.flat.saturating_add(self.finished),
        };
        once.saturating_mul(self.times)
    }

    /// Whether nothing is said of it, so that it takes whatever is left.
    pub(super) fn is_open(&self) -> bool {
        self.range == OPEN
    }

    /// How far it lies from its ideal.
    pub(super) fn departure(&self) -> Length {
        if self.is_open() {
            return Length::ZERO;
        }
        (self.now - self.range.ideal).abs()
    }
}

/// A sum over the pieces as they are now, plain cloth that takes what is left not counted.
pub(super) fn sum(pieces: &[Piece], measure: Measure) -> Length {
    let values = pieces.iter().flat_map(Piece::values);
    let laid: Length = values.map(|value| value.now * value.weight(measure)).sum();
    let turns = pieces.iter().map(|piece| piece.lost_in_turns(measure));
    laid + turns.sum()
}
