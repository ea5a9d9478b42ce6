//! The creases and runs of one pleat; beyond this file the kinds differ no more.

use pelmet_measure::Length;
use pelmet_model::{
    CreaseKind, CreaseMade, CreasePattern, Drawn, FoldMade, Held, PatternFace, PleatKind,
    PleatMade, Toward,
};

/// The two lengths a pattern is measured in.
#[derive(Copy, Clone, Debug)]
pub(super) struct Size {
    pub(super) depth: Length,
    pub(super) face: Length,
}

/// A pleat with its creases, which do not know its index yet.
#[derive(Clone, Debug)]
pub(super) struct Laid {
    pub(super) pleat: PleatMade,
    pub(super) creases: Vec<CreaseMade>,
    pub(super) drawn: Vec<Drawn>,
}

impl Laid {
    /// A folded pleat from position 0: its pattern, turned over where it points to the right.
    pub(super) fn folded(
        kind: PleatKind,
        pattern: &CreasePattern,
        size: Size,
        toward: Toward,
    ) -> Self {
        let end = pattern.flat.of(size.depth, size.face);
        let mut creases: Vec<CreaseMade> = pattern
            .creases
            .iter()
            .map(|crease| CreaseMade {
                at: crease.at.of(size.depth, size.face),
                kind: crease.kind,
                pleat: 0,
            })
            .collect();
        if toward == Toward::Right && pattern.lies_to_one_side() {
            creases.reverse();
            for crease in &mut creases {
                crease.at = end - crease.at;
            }
        }
        let face = match pattern.face {
            PatternFace::None => None,
            PatternFace::AsSaid | PatternFace::FoldsMeet => Some(size.face),
        };
        let pleat = PleatMade {
            held: pattern.held,
            ..bare(kind, size.depth, face, end)
        };
        folded(pleat, creases)
    }

    /// A stitched pleat from position 0 that takes up so much and leaves a face.
    ///
    /// Fingers are folded at equal parts of the cloth between the two points; pressed together
    /// they hide what lies between the first and the last.
    pub(super) fn stitched(kind: PleatKind, fingers: u32, take_up: Length, face: Length) -> Self {
        let count = u64::from(fingers);
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
        let pleat = PleatMade {
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
    pub(super) fn gathered(kind: PleatKind, take_up: Length, finished: Length) -> Self {
        let end = take_up + finished;
        let pleat = PleatMade {
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
        let mountains = self
            .creases
            .iter()
            .filter(|crease| crease.kind == CreaseKind::Mountain);
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
            fold.toward = fold.toward.mirrored();
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
fn bare(kind: PleatKind, depth: Length, face: Option<Length>, to: Length) -> PleatMade {
    PleatMade {
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
fn folded(mut pleat: PleatMade, creases: Vec<CreaseMade>) -> Laid {
    let mut turned = Length::ZERO;
    let pairs = creases.chunks_exact(2).filter_map(|pair| match pair {
        [one, other] => Some((one, other)),
        _ => None,
    });
    for (one, other) in pairs {
        let over = other.at - one.at;
        let finished = one.at - turned * 2;
        turned += over;
        pleat.folds.push(if one.kind == CreaseKind::Mountain {
            FoldMade {
                crease: one.at,
                brought_to: one.at + over * 2,
                finished,
                toward: Toward::Right,
            }
        } else {
            FoldMade {
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

fn whole(count: usize) -> i64 {
    i64::try_from(count).unwrap_or(i64::MAX)
}
