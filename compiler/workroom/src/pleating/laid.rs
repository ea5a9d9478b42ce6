//! The creases of one pleat, for each kind; beyond this file the flat kinds differ no more.

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
        let end = depth * 2;
        let creases = match toward {
            Toward::Left => vec![valley(depth), mountain(end)],
            Toward::Right => vec![mountain(Length::ZERO), valley(depth)],
        };
        folded(bare("knife", depth, None, end), creases)
    }

    /// A box pleat from position 0.
    pub(super) fn boxed(depth: Length, face: Length) -> Self {
        let (left, right) = (depth * 2, depth * 2 + face);
        let creases = vec![
            valley(depth),
            mountain(left),
            mountain(right),
            valley(right + depth),
        ];
        folded(bare("box", depth, Some(face), depth * 4 + face), creases)
    }

    /// A box pleat standing on another as wide, from position 0: the folds of each side lie
    /// exactly over one another.
    pub(super) fn double_boxed(depth: Length, face: Length) -> Self {
        let end = depth * 8 + face;
        let left = [
            valley(depth),
            mountain(depth * 2),
            valley(depth * 3),
            mountain(depth * 4),
        ];
        let right = left.map(|crease| Crease {
            at: end - crease.at,
            ..crease
        });
        let creases = left.into_iter().chain(right.into_iter().rev()).collect();
        folded(bare("double box", depth, Some(face), end), creases)
    }

    /// An inverted pleat from position 0.
    pub(super) fn inverted(kind: &'static str, depth: Length, face: Length) -> Self {
        let end = depth * 2 + face;
        let creases = vec![
            mountain(Length::ZERO),
            valley(depth),
            valley(depth + face),
            mountain(end),
        ];
        folded(bare(kind, depth, Some(face), end), creases)
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

/// A pleat from position 0 to `to`, not folded yet.
fn bare(kind: &'static str, depth: Length, face: Option<Length>, to: Length) -> Pleat {
    Pleat {
        step: 0,
        mirrored: false,
        kind,
        depth,
        face,
        take_up: Length::ZERO,
        from: Length::ZERO,
        to,
        folds: Vec::new(),
    }
}

/// The pleat with its visible folds and its take-up, both read off its creases: cloth turned over
/// is taken up twice, and every mountain shows.
fn folded(mut pleat: Pleat, creases: Vec<Crease>) -> Laid {
    let mut turned = Length::ZERO;
    let pairs = creases.chunks_exact(2).filter_map(|pair| match pair {
        [one, other] => Some((one, other)),
        _ => None,
    });
    for (one, other) in pairs {
        let over = other.at - one.at;
        let finished = one.at - turned * 2;
        turned += over;
        pleat.folds.push(if one.mountain {
            Fold {
                crease: one.at,
                brought_to: one.at + over * 2,
                finished,
                toward: Toward::Right,
            }
        } else {
            Fold {
                crease: other.at,
                brought_to: other.at - over * 2,
                finished: finished - over,
                toward: Toward::Left,
            }
        });
    }
    pleat.take_up = turned * 2;
    Laid { pleat, creases }
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
