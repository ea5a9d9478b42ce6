//! The creases of one pleat, for each kind; beyond this file the flat kinds differ no more.

use pelmet_measure::Length;
use pelmet_model::{Crease, Drawn, Fold, Held, Pleat, StitchedShape, Toward};

/// A pleat with its creases, which do not know its index yet.
#[derive(Clone, Debug)]
pub(super) struct Laid {
    pub(super) pleat: Pleat,
    pub(super) creases: Vec<Crease>,
    pub(super) drawn: Vec<Drawn>,
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

    /// A tuck from position 0: the fold lies in front of the panel, its root stitched.
    pub(super) fn tuck(depth: Length, toward: Toward) -> Self {
        let end = depth * 2;
        let creases = match toward {
            Toward::Left => vec![valley(Length::ZERO), mountain(depth)],
            Toward::Right => vec![mountain(depth), valley(end)],
        };
        let pleat = Pleat {
            held: Held::Stitched,
            ..bare("tuck", depth, None, end)
        };
        folded(pleat, creases)
    }

    /// A stitched pleat from position 0 that takes up so much and leaves a face.
    ///
    /// Fingers are folded at equal parts of the cloth between the two points; pressed together
    /// they hide what lies between the first and the last.
    pub(super) fn stitched(shape: StitchedShape, take_up: Length, face: Length) -> Self {
        let (kind, count) = match shape {
            StitchedShape::Pinch { fingers } => ("pinch", u64::from(fingers.max(1))),
            StitchedShape::Goblet => ("goblet", 0),
            StitchedShape::Cartridge => ("cartridge", 0),
        };
        let end = take_up + face;
        let parts = count.max(1).saturating_mul(2);
        let part = |odd: u64| end.portion(odd, parts);
        let fingers = (0..count).map(|finger| part(finger.saturating_mul(2).saturating_add(1)));
        let fingers: Vec<Length> = fingers.collect();
        let between = fingers.first().zip(fingers.last());
        let ends = match between {
            Some((first, last)) if first < last => vec![Length::ZERO, *first, *last, end],
            _ => vec![Length::ZERO, end],
        };
        let pleat = Pleat {
            take_up,
            held: Held::Stitched,
            fingers,
            ..bare(kind, take_up.portion(1, parts), Some(face), end)
        };
        Self {
            pleat,
            creases: Vec::new(),
            drawn: runs(&ends, face),
        }
    }

    /// A gathered run from position 0 that takes up so much and is drawn up to `finished`.
    pub(super) fn gathered(kind: &'static str, take_up: Length, finished: Length) -> Self {
        let end = take_up + finished;
        let pleat = Pleat {
            take_up,
            held: Held::Drawn,
            ..bare(kind, Length::ZERO, Some(finished), end)
        };
        Self {
            pleat,
            creases: Vec::new(),
            drawn: runs(&[Length::ZERO, end], finished),
        }
    }

    /// The pleat with each of its creases opened by what is lost in its turn: a crease is marked in
    /// the middle of its turn, and everything beyond it lies so much farther on.
    pub(super) fn with_turns(mut self, turn: Length) -> Self {
        if self.pleat.held != Held::Pressed {
            return self;
        }
        let half_turn = turn.divided(2);
        for fold in &mut self.pleat.folds {
            let before = self
                .creases
                .iter()
                .filter(|crease| crease.at < fold.brought_to);
            let on_crease = self
                .creases
                .iter()
                .any(|crease| crease.at == fold.brought_to);
            fold.brought_to += turn * whole(before.count());
            fold.brought_to += half_turn * i64::from(on_crease);
        }
        for (index, crease) in self.creases.iter_mut().enumerate() {
            crease.at += turn * whole(index) + half_turn;
        }
        let mountains = self.creases.iter().filter(|crease| crease.mountain);
        for (fold, mountain) in self.pleat.folds.iter_mut().zip(mountains) {
            fold.crease = mountain.at;
        }
        self.pleat.turn = turn;
        self.pleat.to += self.pleat.lost_in_turns();
        self
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
        for finger in &mut self.pleat.fingers {
            *finger += flat;
        }
        for crease in &mut self.creases {
            crease.at += flat;
        }
        for run in &mut self.drawn {
            run.from += flat;
            run.to += flat;
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
        pleat.fingers.reverse();
        for finger in &mut pleat.fingers {
            *finger = flat - *finger;
        }
        for crease in &mut self.creases {
            crease.at = flat - crease.at;
        }
        self.drawn.reverse();
        for run in &mut self.drawn {
            (run.from, run.to) = (flat - run.to, flat - run.from);
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
        turn: Length::ZERO,
        from: Length::ZERO,
        to,
        folds: Vec::new(),
        held: Held::Pressed,
        fingers: Vec::new(),
    }
}

/// Drawn runs between these positions, sharing what they keep as they share the cloth; the inner
/// ones stand between fingers.
fn runs(ends: &[Length], keeps: Length) -> Vec<Drawn> {
    let last = ends.len().saturating_sub(2);
    let whole = ends.last().copied().unwrap_or_default();
    let kept = |at: Length| {
        at.ratio_to(whole)
            .map_or(Length::ZERO, |part| keeps.scaled(part))
    };
    let pairs = ends.iter().zip(ends.iter().skip(1)).enumerate();
    pairs
        .map(|(index, (&from, &to))| Drawn {
            from,
            to,
            keeps: kept(to) - kept(from),
            between_fingers: index > 0 && index < last,
        })
        .collect()
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
    Laid {
        pleat,
        creases,
        drawn: Vec::new(),
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

fn whole(count: usize) -> i64 {
    i64::try_from(count).unwrap_or(i64::MAX)
}
