//! Where a folded panel hides its cloth, and seams brought there.

use pelmet_measure::Length;
use pelmet_model::{Folding, Lies, StretchMade};

/// Two places on the flat strip, the left one first, and all that lies between them.
pub(crate) type Run = (Length, Length);

/// The flat runs that are not seen once the panel is folded, from left to right.
pub(crate) fn hidden_runs(folding: &Folding) -> Vec<Run> {
    let mut runs: Vec<Run> = Vec::new();
    for (index, stretch) in folding.stretches.iter().enumerate() {
        let mut of_stretch = match stretch.lies {
            Lies::Flat => covered(folding, index, stretch),
            Lies::Drawn => vec![],
            Lies::BetweenFingers => vec![(stretch.flat_from, stretch.flat_to)],
        };
        of_stretch.sort_unstable();
        for run in of_stretch {
            add_run(&mut runs, run);
        }
    }
    runs
}

/// The parts of a flat stretch that others lie on.
fn covered(folding: &Folding, index: usize, stretch: &StretchMade) -> Vec<Run> {
    let (left, right) = stretch.span();
    let before = folding.layers.partition_point(|layers| layers.to <= left);
    let over = folding.layers.iter().skip(before);
    let over = over.take_while(|layers| layers.from < right);
    let under_others = over.filter(|layers| layers.top != index);
    let laid_from = stretch.flat_from + stretch.turn_from;
    let flat_at = |finished: Length| laid_from + (finished - stretch.finished_from).abs();
    under_others
        .map(|layers| {
            let one = flat_at(layers.from.max(left));
            let other = flat_at(layers.to.min(right));
            with_turns(stretch, (one.min(other), one.max(other)))
        })
        .collect()
}

/// A run that reaches an end of its stretch takes in what is lost there in the turn.
fn with_turns(stretch: &StretchMade, (from, to): Run) -> Run {
    let at_start = from <= stretch.flat_from + stretch.turn_from;
    let at_end = to >= stretch.flat_to - stretch.turn_to;
    (
        if at_start { stretch.flat_from } else { from },
        if at_end { stretch.flat_to } else { to },
    )
}

fn add_run(runs: &mut Vec<Run>, run: Run) {
    match runs.last_mut() {
        Some(last) if run.0 <= last.1 => last.1 = last.1.max(run.1),
        _ => runs.push(run),
    }
}

/// The place of the runs nearest to another.
pub(crate) fn nearest_in(runs: &[Run], wanted: Length) -> Option<Length> {
    let clamped = runs.iter().map(|(from, to)| wanted.clamp(*from, *to));
    clamped.min_by_key(|place| (*place - wanted).abs())
}

/// The run in which a place lies; the place alone where none reaches it.
pub(crate) fn run_around(runs: &[Run], at: Length) -> Run {
    let around = runs.iter().find(|(from, to)| *from <= at && at <= *to);
    around.copied().unwrap_or((at, at))
}

/// What seams between strips may do.
pub(crate) struct SeamRoom<'a> {
    /// Where the outermost strips begin and end.
    pub(crate) ends: Run,
    /// The least and the most a strip may have between its seams.
    pub(crate) strip: Run,
    /// Where a seam is not seen, from left to right.
    pub(crate) hidden: &'a [Run],
}

impl SeamRoom<'_> {
    /// The seams moved from where they were to the nearest hidden places that the strips allow:
    /// all of them if that can be, or else as many as the strips let go, from the right.
    pub(crate) fn hide(&self, seams: &[Length]) -> Vec<Length> {
        let only_hidden = |_: &Length| self.hidden.to_vec();
        let or_as_it_was = |seam: &Length| with_place(self.hidden, *seam);
        self.place(seams, only_hidden)
            .or_else(|| self.place(seams, or_as_it_was))
            .unwrap_or_else(|| seams.to_vec())
    }

    /// Places for the seams among those allowed to each; `None` where strips of the widths allowed
    /// do not reach from one end to the other by them.
    fn place(
        &self,
        seams: &[Length],
        allowed: impl Fn(&Length) -> Vec<Run>,
    ) -> Option<Vec<Length>> {
        // Forward from the left end it is worked out where each seam could lie at all, as runs and not as
        // places, so that nothing is given up early. Only then, back from the right end, is each seam put
        // down: whatever is chosen for it, the seams to its left are known to have somewhere to go.
        let mut reached = vec![(self.ends.0, self.ends.0)];
        let mut within_reach = Vec::new();
        for seam in seams {
            reached = self.common(&self.one_strip_on(&reached), &allowed(seam));
            within_reach.push(reached.clone());
        }
        let mut next = self.ends.1;
        let mut placed = Vec::new();
        for (seam, reach) in seams.iter().zip(&within_reach).rev() {
            let (least, most) = self.strip;
            let here = self.common(reach, &[(next - most, next - least)]);
            let hidden = self.common(&here, self.hidden);
            next = nearest_in(&hidden, *seam).or_else(|| nearest_in(&here, *seam))?;
            placed.push(next);
        }
        placed.reverse();
        let (least, most) = self.strip;
        let first = placed.first().map_or(next, |first| *first) - self.ends.0;
        (least..=most).contains(&first).then_some(placed)
    }

    /// Where a strip can end that begins in one of these runs.
    fn one_strip_on(&self, runs: &[Run]) -> Vec<Run> {
        let (least, most) = self.strip;
        let mut on = Vec::new();
        for (from, to) in runs {
            add_run(&mut on, (*from + least, *to + most));
        }
        on
    }

    /// What two lists of runs have in common.
    fn common(&self, one: &[Run], other: &[Run]) -> Vec<Run> {
        let mut common = Vec::new();
        let mut others = other.iter().peekable();
        for &(from, to) in one {
            while let Some(&&(other_from, other_to)) = others.peek() {
                let both = (from.max(other_from), to.min(other_to));
                if both.0 <= both.1 {
                    common.push(both);
                }
                if other_to > to {
                    break;
                }
                others.next();
            }
        }
        common
    }
}

/// The runs and one place more, from left to right.
fn with_place(runs: &[Run], place: Length) -> Vec<Run> {
    let mut all = runs.to_vec();
    if !runs.iter().any(|(from, to)| *from <= place && place <= *to) {
        all.push((place, place));
        all.sort_unstable();
    }
    all
}

#[cfg(test)]
#[expect(
    clippy::arithmetic_side_effects,
    reason = "whole inches of a test stay small"
)]
mod tests {
    use proptest::prelude::*;

    use super::*;
    use crate::{fold, fold_pleating, is_hidden, lay_out};
    use pelmet_model::{
        CreaseKind, CreaseMade, PleatKind, PleatOrder, PleatRule, PleatStep, Ranged, Start,
        StepKind,
    };

    fn crease_kind(mountain: bool) -> CreaseKind {
        if mountain {
            CreaseKind::Mountain
        } else {
            CreaseKind::Valley
        }
    }

    fn knife_after(plain: Length, depth: Length) -> PleatRule {
        let knife = PleatOrder::new(PleatKind::Knife, Ranged::fixed(depth));
        let steps = [
            StepKind::Plain(Ranged::fixed(plain)),
            StepKind::Pleat(knife),
            StepKind::Rest,
        ];
        let steps = steps.into_iter().enumerate();
        PleatRule {
            name: String::new(),
            start: Start::Left,
            mirrored: false,
            steps: steps
                .map(|(number, kind)| PleatStep { number, kind })
                .collect(),
            layers: None,
            print: None,
            folding_error: None,
            turn_of_cloth: None,
        }
    }

    fn inches(runs: &[(i64, i64)]) -> Vec<Run> {
        let run = |&(from, to): &(i64, i64)| (Length::inches(from), Length::inches(to));
        runs.iter().map(run).collect()
    }

    fn hide(hidden: &[(i64, i64)], seams: &[i64], end: i64, most: i64) -> Vec<i64> {
        let hidden = inches(hidden);
        let room = SeamRoom {
            ends: (Length::ZERO, Length::inches(end)),
            strip: (Length::inches(4), Length::inches(most)),
            hidden: &hidden,
        };
        let seams: Vec<Length> = seams.iter().map(|at| Length::inches(*at)).collect();
        let placed = room.hide(&seams);
        placed
            .iter()
            .map(|at| at.nanometres() / Length::INCH.nanometres())
            .collect()
    }

    #[test]
    fn seams_go_to_the_nearest_hidden_places_that_the_strips_allow() {
        let many = [(8, 10), (18, 20), (28, 30), (38, 40), (48, 50)];
        for (name, seams, end, most, expected) in [
            ("already hidden", vec![19, 39], 58, 20, vec![19, 39]),
            ("one near", vec![15, 39], 58, 21, vec![18, 39]),
            ("both", vec![12, 46], 58, 40, vec![10, 48]),
            (
                "the nearer would make the next strip too wide",
                vec![12, 46],
                58,
                30,
                vec![18, 48],
            ),
            ("no room at all", vec![24, 44], 68, 24, vec![24, 48]),
        ] {
            assert_eq!(hide(&many, &seams, end, most), expected, "{name}");
        }
        assert_eq!(hide(&[], &[20, 40], 60, 20), [20, 40], "nothing is hidden");
        let by_the_edge = [(2, 3), (10, 12)];
        assert_eq!(
            hide(&by_the_edge, &[5], 30, 30),
            [10],
            "a strip of 3 in is too narrow"
        );
    }

    /// The first strip is measured from where it begins, not from the edge of the cut piece.
    #[test]
    fn the_outermost_strips_begin_and_end_within_the_piece() {
        let hidden = inches(&[(24, 25)]);
        let room = SeamRoom {
            ends: (Length::inches(5), Length::inches(45)),
            strip: (Length::inches(4), Length::inches(22)),
            hidden: &hidden,
        };
        assert_eq!(room.hide(&[Length::inches(23)]), [Length::inches(24)]);
    }

    #[test]
    fn a_knife_pleat_hides_its_fold_and_what_lies_beneath() {
        let crease = |inches: i64, mountain| CreaseMade {
            at: Length::inches(inches),
            kind: crease_kind(mountain),
            pleat: 0,
        };
        let folding = fold(Length::inches(20), &[crease(6, false), crease(8, true)]);
        assert_eq!(hidden_runs(&folding), inches(&[(4, 8)]));
    }

    /// The valley of a knife 2 in deep turns at 6 1/2 in and its mountain at 9 1/2 in, each over an
    /// inch. The cloth behind the fold is hidden, and of the mountain's turn what is behind.
    #[test]
    fn a_turn_is_hidden_on_the_side_that_is() {
        let rule = PleatRule {
            turn_of_cloth: Some(Length::INCH),
            ..knife_after(Length::inches(4), Length::inches(2))
        };
        let laid = lay_out(&rule, None, Some(Length::inches(20))).unwrap();
        let halves = |inches: i64| Length::inch_fraction(inches, 2);
        assert_eq!(laid.creases[1].at, halves(19));
        let folding = fold_pleating(&laid);
        assert_eq!(hidden_runs(&folding), [(halves(8), halves(19))]);
    }

    proptest! {
        #[test]
        fn a_run_is_hidden_within_and_seen_outside(
            creases in prop::collection::vec((1_i64..400, any::<bool>()), 0..12),
            at in 0_i64..400,
        ) {
            let creases: Vec<CreaseMade> = creases
                .iter()
                .map(|&(at, mountain)| CreaseMade { at: Length::millimetres(at), kind: crease_kind(mountain), pleat: 0 })
                .collect();
            let folding = fold(Length::millimetres(400), &creases);
            let place = Length::millimetres(at) + Length::from_nanometres(500_000);
            let within = hidden_runs(&folding)
                .iter()
                .any(|(from, to)| *from < place && place < *to);
            prop_assert_eq!(within, is_hidden(&folding, place));
            prop_assert!(hidden_runs(&folding).iter().all(|(from, to)| from < to));
        }

        /// Strips are never wider than the cloth or narrower than can be pressed.
        #[test]
        fn strips_keep_to_their_widths(
            hidden in prop::collection::btree_set(0_i64..200, 0..20),
            widths in prop::collection::vec(4_i64..=30, 2..7),
        ) {
            let bounds: Vec<i64> = hidden.into_iter().collect();
            let hidden: Vec<(i64, i64)> =
                bounds.chunks_exact(2).map(|pair| (pair[0], pair[1])).collect();
            let mut at = 0;
            let mut seams: Vec<i64> = widths.iter().map(|width| { at += width; at }).collect();
            let end = seams.pop().unwrap();
            let placed = hide(&hidden, &seams, end, 30);
            let mut from = 0;
            for to in placed.iter().chain([&end]) {
                prop_assert!((4..=30).contains(&(to - from)), "{:?}", placed);
                from = *to;
            }
            let seen = |seams: &[i64]| {
                let is_in = |at: &&i64| hidden.iter().any(|(from, to)| from <= *at && *at <= to);
                seams.len() - seams.iter().filter(is_in).count()
            };
            prop_assert!(seen(&placed) <= seen(&seams), "{:?}", placed);
        }
    }
}
