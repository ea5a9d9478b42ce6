//! Tiny jobs, searched to the end: bound <= optimum <= layout.

#![expect(
    clippy::arithmetic_side_effects,
    clippy::indexing_slicing,
    reason = "the sums are tiny and a test stops at the first broken promise"
)]

mod common;

use common::{LITTLE, mm, plain_cloth};
use pelmet_bolt::{BoltFlaw, LayoutCloth, LayoutPiece, check, lay_with};
use proptest::option;
use proptest::prelude::*;

/// A job in whole millimetres.
#[derive(Clone, Debug)]
struct TinyJob {
    usable: i64,
    gap: i64,
    along: Option<i64>,
    across: Option<i64>,
    half_drop: bool,
    bolt: Option<i64>,
    flaws: Vec<TinyFlaw>,
    pieces: Vec<TinyPiece>,
}

#[derive(Copy, Clone, Debug)]
struct TinyPiece {
    width: i64,
    length: i64,
    quantity: u32,
    phase_along: Option<i64>,
    phase_across: Option<i64>,
}

#[derive(Copy, Clone, Debug)]
struct TinyFlaw {
    bolt: u8,
    from: i64,
    length: i64,
    /// From the left end, and how wide; `None` for the whole cloth.
    across: Option<(i64, i64)>,
}

#[derive(Copy, Clone)]
struct TinyPlace {
    bolt: usize,
    across: i64,
    along: i64,
    width: i64,
    length: i64,
}

fn tiny_job() -> impl Strategy<Value = TinyJob> {
    let piece = (
        1..=5_i64,
        1..=4_i64,
        1..=2_u32,
        option::of(0..4_i64),
        option::of(0..3_i64),
    )
        .prop_map(
            |(width, length, quantity, phase_along, phase_across)| TinyPiece {
                width,
                length,
                quantity,
                phase_along,
                phase_across,
            },
        );
    (
        (2..=6_i64, 0..=1_i64),
        option::of(prop::sample::select(vec![2, 4])),
        option::of(2..=3_i64),
        any::<bool>(),
        option::of(4..=8_i64),
        prop::collection::vec(tiny_flaw(), 0..=2),
        prop::collection::vec(piece, 1..=3),
    )
        .prop_map(
            |((usable, gap), along, across, half_drop, bolt, mut flaws, mut pieces)| {
                for flaw in &mut flaws {
                    flaw.across = flaw
                        .across
                        .map(|(left, width)| (left.min(usable - 1), width));
                }
                for piece in &mut pieces {
                    piece.width = piece.width.min(usable);
                    piece.phase_along = piece.phase_along.filter(|_| along.is_some());
                    piece.phase_across = piece.phase_across.filter(|_| across.is_some());
                }
                TinyJob {
                    usable,
                    gap,
                    along,
                    across,
                    half_drop,
                    bolt,
                    flaws,
                    pieces,
                }
            },
        )
}

fn tiny_flaw() -> impl Strategy<Value = TinyFlaw> {
    let across = option::of((0..=5_i64, 1..=2_i64));
    (0..=1_u8, 0..=9_i64, 1..=3_i64, across).prop_map(|(bolt, from, length, across)| TinyFlaw {
        bolt,
        from,
        length,
        across,
    })
}

impl TinyJob {
    fn cloth(&self) -> LayoutCloth {
        LayoutCloth {
            gap: mm(self.gap),
            repeat_along: self.along.map(mm),
            repeat_across: self.across.map(mm),
            half_drop: self.half_drop,
            bolt_length: self.bolt.map(mm),
            buying_step: mm(1),
            flaws: self.flaws.iter().map(|flaw| self.flaw(flaw)).collect(),
            ..plain_cloth(mm(self.usable))
        }
    }

    /// Left and right edge of a flaw.
    fn sides(&self, flaw: &TinyFlaw) -> (i64, i64) {
        let (left, width) = flaw.across.unwrap_or((0, self.usable));
        (left, (left + width).min(self.usable))
    }

    fn flaw(&self, flaw: &TinyFlaw) -> BoltFlaw {
        let (left, right) = self.sides(flaw);
        BoltFlaw {
            bolt: flaw.bolt.into(),
            from: mm(flaw.from),
            to: mm(flaw.from + flaw.length),
            left: mm(left),
            right: mm(right),
        }
    }

    fn is_sound(&self, place: &TinyPlace) -> bool {
        !self.flaws.iter().any(|flaw| {
            let (left, right) = self.sides(flaw);
            usize::from(flaw.bolt) == place.bolt
                && place.across < right
                && left < place.across + place.width
                && place.along < flaw.from + flaw.length
                && flaw.from < place.along + place.length
        })
    }

    fn pieces(&self) -> Vec<LayoutPiece> {
        let piece = |tiny: &TinyPiece| LayoutPiece {
            width: mm(tiny.width),
            length: mm(tiny.length),
            quantity: tiny.quantity,
            phase_along: tiny.phase_along.map(mm),
            phase_across: tiny.phase_across.map(mm),
            outline: None,
            on_fold: false,
        };
        self.pieces.iter().map(piece).collect()
    }

    fn cuts(&self) -> Vec<(TinyPiece, u32)> {
        let copies = |tiny: &TinyPiece| {
            let tiny = *tiny;
            (0..tiny.quantity).map(move |copy| (tiny, copy))
        };
        self.pieces.iter().flat_map(copies).collect()
    }

    fn print_allows(&self, piece: &TinyPiece, copy: u32, across: i64, along: i64) -> bool {
        let held_across = piece.phase_across.zip(self.across);
        if held_across.is_some_and(|(phase, repeat)| (across + phase) % repeat != 0) {
            return false;
        }
        let Some((phase, repeat)) = piece.phase_along.zip(self.along) else {
            return true;
        };
        let column =
            held_across.map_or(i64::from(copy), |(phase, repeat)| (across + phase) / repeat);
        let drop = if self.half_drop && column % 2 == 1 {
            repeat / 2
        } else {
            0
        };
        (along + phase) % repeat == drop
    }

    /// The least total length under `best`, or `best` where there is none.
    fn optimum(&self, cuts: &[(TinyPiece, u32)], placed: &mut Vec<TinyPlace>, best: i64) -> i64 {
        let Some(((piece, copy), rest)) = cuts.split_first() else {
            return used(placed);
        };
        let mut best = best;
        let bolts = if self.bolt.is_some() {
            // Both of the first bolts may be passed over for their flaws.
            placed.len() + 3
        } else {
            1
        };
        for bolt in 0..bolts {
            for along in 0..=self.bolt.unwrap_or(best).min(best) - piece.length {
                for across in 0..=self.usable - piece.width {
                    let (width, length) = (piece.width, piece.length);
                    let place = TinyPlace {
                        bolt,
                        across,
                        along,
                        width,
                        length,
                    };
                    if !self.print_allows(piece, *copy, across, along)
                        || !self.is_sound(&place)
                        || placed.iter().any(|other| clash(&place, other, self.gap))
                    {
                        continue;
                    }
                    placed.push(place);
                    if used(placed) < best {
                        best = best.min(self.optimum(rest, placed, best));
                    }
                    placed.pop();
                }
            }
        }
        best
    }
}

fn clash(one: &TinyPlace, other: &TinyPlace, gap: i64) -> bool {
    one.bolt == other.bolt
        && one.across < other.across + other.width + gap
        && other.across < one.across + one.width + gap
        && one.along < other.along + other.length + gap
        && other.along < one.along + one.length + gap
}

fn used(placed: &[TinyPlace]) -> i64 {
    let mut ends = vec![0; placed.len() + 3];
    for place in placed {
        ends[place.bolt] = ends[place.bolt].max(place.along + place.length);
    }
    ends.iter().sum()
}

proptest! {
    #![proptest_config(ProptestConfig {
        cases: 300,
        failure_persistence: None,
        ..ProptestConfig::default()
    })]

    #[test]
    fn the_bound_is_under_the_optimum_and_the_layout_over_it(job in tiny_job()) {
        let (cloth, pieces) = (job.cloth(), job.pieces());
        if let Ok(layout) = lay_with(&cloth, &pieces, LITTLE) {
            prop_assert_eq!(check(&cloth, &pieces, &layout), []);
            let found = layout.exact.nanometres() / mm(1).nanometres();
            let optimum = mm(job.optimum(&job.cuts(), &mut Vec::new(), found));
            prop_assert!(layout.lower_bound <= optimum, "bound over the optimum {optimum:?}: {layout:?}");
            prop_assert!(optimum <= layout.exact);
        }
    }
}
