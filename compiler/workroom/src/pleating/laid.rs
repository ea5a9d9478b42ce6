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
        let (creases, crease, brought_to) = match toward {
            Toward::Left => (vec![valley(depth), mountain(end)], end, start),
            Toward::Right => (vec![mountain(start), valley(depth)], start, end),
        };
        let folds = vec![Fold {
            crease,
            brought_to,
            finished: start,
            toward,
        }];
        Self {
            pleat: Pleat {
                folds,
                ..bare("knife", depth, depth * 2)
            },
            creases,
        }
    }

    /// A box pleat from position 0.
    pub(super) fn boxed(depth: Length, face: Length) -> Self {
        let (left, right, end) = (depth * 2, depth * 2 + face, depth * 4 + face);
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
                brought_to: end,
                finished: face,
                toward: Toward::Right,
            },
        ];
        let pleat = Pleat {
            face: Some(face),
            to: end,
            folds,
            ..bare("box", depth, depth * 4)
        };
        Self { pleat, creases }
    }

    /// An inverted pleat from position 0.
    pub(super) fn inverted(depth: Length, face: Length) -> Self {
        let (start, left, end) = (Length::ZERO, depth * 2, depth * 2 + face);
        let creases = vec![
            mountain(start),
            valley(depth),
            valley(depth + face),
            mountain(end),
        ];
        let gap = face - depth * 2;
        let folds = vec![
            Fold {
                crease: start,
                brought_to: left,
                finished: start,
                toward: Toward::Right,
            },
            Fold {
                crease: end,
                brought_to: face,
                finished: gap,
                toward: Toward::Left,
            },
        ];
        let pleat = Pleat {
            face: Some(face),
            to: end,
            folds,
            ..bare("inverted", depth, depth * 4)
        };
        Self { pleat, creases }
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
}

/// A pleat from position 0 that uses as much flat cloth as it takes up.
fn bare(kind: &'static str, depth: Length, take_up: Length) -> Pleat {
    Pleat {
        step: 0,
        mirrored: false,
        kind,
        depth,
        face: None,
        take_up,
        from: Length::ZERO,
        to: take_up,
        folds: Vec::new(),
    }
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
