//! The creases of one pleat, for each kind; beyond this file the kinds differ no more.

use pelmet_measure::Length;

use crate::{Crease, Fold, Pleat, Toward};

/// A pleat with its creases, which do not know its index yet.
#[derive(Clone, Debug)]
pub(super) struct Laid {
    pub(super) pleat: Pleat,
    pub(super) creases: Vec<Crease>,
}

impl Laid {
    /// A knife pleat from position 0.
    pub(super) fn knife(depth: Length, toward: Toward) -> Self {
        let (start, end) = (Length::ZERO, depth * 2);
        let creases = match toward {
            Toward::Left => vec![valley(depth), mountain(end)],
            Toward::Right => vec![mountain(start), valley(depth)],
        };
        let (crease, brought_to) = match toward {
            Toward::Left => (end, start),
            Toward::Right => (start, end),
        };
        let folds = vec![Fold {
            crease,
            brought_to,
            finished: start,
            toward,
        }];
        Self::new(
            Kind {
                name: "knife",
                depth,
                face: None,
                width: end,
                take_up: end,
            },
            folds,
            creases,
        )
    }

    /// A box pleat from position 0.
    pub(super) fn boxed(depth: Length, face: Length) -> Self {
        let (left, right) = (depth * 2, depth * 2 + face);
        let (take_up, width) = (depth * 4, depth * 4 + face);
        let creases = vec![
            valley(depth),
            mountain(left),
            mountain(right),
            valley(right + depth),
        ];
        let start = Length::ZERO;
        let folds = vec![
            Fold {
                crease: left,
                brought_to: start,
                finished: start,
                toward: Toward::Left,
            },
            Fold {
                crease: right,
                brought_to: width,
                finished: face,
                toward: Toward::Right,
            },
        ];
        Self::new(
            Kind {
                name: "box",
                depth,
                face: Some(face),
                width,
                take_up,
            },
            folds,
            creases,
        )
    }

    /// An inverted pleat from position 0.
    pub(super) fn inverted(depth: Length, face: Length) -> Self {
        let (take_up, width) = (depth * 4, depth * 2 + face);
        let start = Length::ZERO;
        let creases = vec![
            mountain(start),
            valley(depth),
            valley(depth + face),
            mountain(width),
        ];
        let gap = face - depth * 2;
        let folds = vec![
            Fold {
                crease: start,
                brought_to: depth * 2,
                finished: start,
                toward: Toward::Right,
            },
            Fold {
                crease: width,
                brought_to: face,
                finished: gap,
                toward: Toward::Left,
            },
        ];
        Self::new(
            Kind {
                name: "inverted",
                depth,
                face: Some(face),
                width,
                take_up,
            },
            folds,
            creases,
        )
    }

    /// The pleat further right by so much on the flat and on the finished strip.
    pub(super) fn moved(mut self, flat: Length, finished: Length) -> Self {
        self.pleat.from += flat;
        self.pleat.to += flat;
        for fold in &mut self.pleat.folds {
            fold.crease += flat;
            fold.brought_to += flat;
            fold.finished += finished;
        }
        for crease in &mut self.creases {
            crease.at += flat;
        }
        self
    }

    /// The mirror image on a strip of these widths.
    pub(super) fn mirrored(mut self, flat: Length, finished: Length) -> Self {
        let pleat = &mut self.pleat;
        pleat.mirrored = true;
        (pleat.from, pleat.to) = (flat - pleat.to, flat - pleat.from);
        pleat.folds.reverse();
        for fold in &mut pleat.folds {
            fold.crease = flat - fold.crease;
            fold.brought_to = flat - fold.brought_to;
            fold.finished = finished - fold.finished;
            fold.toward = match fold.toward {
                Toward::Left => Toward::Right,
                Toward::Right => Toward::Left,
            };
        }
        for crease in &mut self.creases {
            crease.at = flat - crease.at;
        }
        self
    }

    fn new(kind: Kind, folds: Vec<Fold>, creases: Vec<Crease>) -> Self {
        let pleat = Pleat {
            step: 0,
            mirrored: false,
            kind: kind.name,
            depth: kind.depth,
            face: kind.face,
            take_up: kind.take_up,
            from: Length::ZERO,
            to: kind.width,
            folds,
        };
        Self { pleat, creases }
    }
}

struct Kind {
    name: &'static str,
    depth: Length,
    face: Option<Length>,
    width: Length,
    take_up: Length,
}

fn mountain(at: Length) -> Crease {
    Crease {
        at,
        mountain: true,
        pleat: 0,
    }
}

fn valley(at: Length) -> Crease {
    Crease {
        at,
        mountain: false,
        pleat: 0,
    }
}
