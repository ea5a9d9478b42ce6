//! Short ways to write a rule down.

use pelmet_measure::{Length, Ratio};
use pelmet_model::{
    DrawnOrder, FoldPlace, PleatKind, PleatOrder, PleatRule, PleatStep, Ranged, Start, StepKind,
    TowardOrder,
};

pub fn inches(eighths: i64) -> Length {
    Length::inch_fraction(eighths, 8)
}

/// So many tenths of a centimetre.
pub fn centimetres(tenths: i64) -> Length {
    Length::millimetres(tenths)
}

pub fn from_left(steps: Vec<StepKind>) -> PleatRule {
    rule(Start::Left, false, steps)
}

pub fn from_centre(steps: Vec<StepKind>) -> PleatRule {
    rule(Start::Centre, true, steps)
}

pub fn rule(start: Start, mirrored: bool, steps: Vec<StepKind>) -> PleatRule {
    let steps = numbered(steps, &mut 0);
    let name = String::from("under test");
    PleatRule {
        name,
        start,
        mirrored,
        steps,
        layers: None,
        print: None,
        folding_error: None,
        turn_of_cloth: None,
    }
}

pub fn plain(length: Length) -> StepKind {
    StepKind::Plain(Ranged::fixed(length))
}

pub fn open(least: Length, most: Length, ideal: Length) -> StepKind {
    StepKind::Plain(Ranged::between(least, most, ideal))
}

pub fn knife(depth: Length, toward: TowardOrder) -> StepKind {
    pleat(pointing(PleatKind::Knife, toward), Ranged::fixed(depth))
}

pub fn boxed(depth: Length, face: Option<Length>) -> StepKind {
    pleat(
        faced(PleatKind::Box, face.map(Ranged::fixed)),
        Ranged::fixed(depth),
    )
}

pub fn inverted(depth: Length, face: Option<Length>) -> StepKind {
    pleat(
        faced(PleatKind::Inverted, face.map(Ranged::fixed)),
        Ranged::fixed(depth),
    )
}

pub fn double_boxed(depth: Length, face: Option<Length>) -> StepKind {
    pleat(
        faced(PleatKind::DoubleBox, face.map(Ranged::fixed)),
        Ranged::fixed(depth),
    )
}

/// A pleat of a kind, nothing else said of it.
pub fn of(kind: PleatKind) -> PleatOrder {
    PleatOrder::new(kind, Ranged::fixed(Length::ZERO))
}

pub fn pointing(kind: PleatKind, toward: TowardOrder) -> PleatOrder {
    PleatOrder { toward, ..of(kind) }
}

pub fn faced(kind: PleatKind, face: Option<Ranged<Length>>) -> PleatOrder {
    PleatOrder { face, ..of(kind) }
}

pub fn pinch(fingers: u32, face: Option<Ranged<Length>>) -> PleatOrder {
    PleatOrder {
        fingers,
        ..faced(PleatKind::Pinch, face)
    }
}

pub fn drawn_up(kind: PleatKind, ratio: Option<Ratio>, to: Option<Ranged<Length>>) -> PleatOrder {
    PleatOrder {
        drawn: DrawnOrder { ratio, to },
        ..of(kind)
    }
}

pub fn pleat(mut order: PleatOrder, depth: Ranged<Length>) -> StepKind {
    order.depth = depth;
    StepKind::Pleat(order)
}

pub fn placed(step: StepKind, place: FoldPlace) -> StepKind {
    match step {
        StepKind::Pleat(order) => StepKind::Pleat(PleatOrder {
            place: Some(place),
            ..order
        }),
        other => other,
    }
}

pub fn repeat(count: Ranged<u32>, steps: Vec<StepKind>) -> StepKind {
    // The numbers are given when the rule is put together.
    let steps = steps
        .into_iter()
        .map(|kind| PleatStep { number: 0, kind })
        .collect();
    StepKind::Repeat { count, steps }
}

/// As often as fits.
pub fn any_number(steps: Vec<StepKind>) -> StepKind {
    repeat(
        Ranged {
            least: 1,
            ideal: 1,
            most: u32::MAX,
        },
        steps,
    )
}

fn numbered(steps: Vec<StepKind>, next: &mut usize) -> Vec<PleatStep> {
    let mut done = Vec::new();
    for kind in steps {
        let number = *next;
        *next = next.saturating_add(1);
        let kind = match kind {
            StepKind::Repeat { count, steps } => {
                let inner = steps.into_iter().map(|step| step.kind).collect();
                StepKind::Repeat {
                    count,
                    steps: numbered(inner, next),
                }
            }
            other => other,
        };
        done.push(PleatStep { number, kind });
    }
    done
}
