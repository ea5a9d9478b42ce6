//! Search for a layout of a given length: the pieces may overlap at first, and the overlaps are
//! worked out one by one.
//!
//! A piece that overlaps moves to where it overlaps least. Where that no longer helps, the overlaps
//! that are left count for more and more, which drives the pieces out of the jam (guided local
//! search: C. Voudouris and E. Tsang, "Guided local search and its application to the travelling
//! salesman problem", European Journal of Operational Research 113, 1999).

use pelmet_measure::Length;

use super::bolts::Stretch;
use super::dice::Dice;
use super::form::{Denied, Laid, Lying, deny, deny_flaws};
use super::near::Near;
use super::weights::{FIRST_WEIGHT, Weights};
use crate::Cloth;
use crate::effort::Steps;
use crate::print::{Grid, Lines};
use crate::space::Place;

/// How many lines along the bolt are looked at for one move; out of more, some are thrown.
const MOST_LINES: usize = 40;

/// An overlap weighed by how often it has been in the way.
type Weighed = u64;

/// Works the overlaps out of `laid`, all on one bolt, with every piece within one of the `stretches`.
/// `None` where the steps run out first, or a piece is too long.
pub(super) fn without_overlaps<'forms>(
    cloth: &Cloth,
    laid: &[Laid<'forms>],
    stretches: &[Stretch],
    dice: &mut Dice,
    steps: &mut Steps,
) -> Option<Vec<Laid<'forms>>> {
    let mut jam = Jam {
        cloth,
        stretches,
        laid: laid.to_vec(),
        near: Near::none(Length::ZERO),
        weights: Weights::first(laid.len()),
        dice,
    };
    jam.start();
    jam.pull_in(steps)?;
    loop {
        let mut in_the_way = jam.in_the_way(steps);
        if in_the_way.is_empty() {
            return Some(jam.laid);
        }
        if steps.are_spent() {
            return None;
        }
        jam.dice.shuffle(&mut in_the_way);
        for index in in_the_way {
            jam.relieve(index, steps);
        }
        jam.weigh(steps);
    }
}

/// Pieces that may overlap.
struct Jam<'run, 'forms> {
    cloth: &'run Cloth,
    /// Where pieces may lie, in order.
    stretches: &'run [Stretch],
    laid: Vec<Laid<'forms>>,
    near: Near,
    weights: Weights,
    dice: &'run mut Dice,
}

impl<'forms> Jam<'_, 'forms> {
    /// Notes where the pieces lie at first.
    fn start(&mut self) {
        let longest = self.laid.iter().map(|laid| laid.form.length).max();
        self.near = Near::none(longest.unwrap_or_default() + self.cloth.gap);
        for (index, laid) in self.laid.iter().enumerate() {
            self.near.add(laid.place.along, index);
        }
    }

    /// Moves a piece.
    fn put(&mut self, index: usize, place: Place, turned: bool) {
        if let Some(laid) = self.laid.get_mut(index) {
            self.near.remove(laid.place.along, index);
            self.near.add(place.along, index);
            (laid.place, laid.turned) = (place, turned);
        }
    }

    /// The other pieces that may lie partly where one would, with the gap on both sides.
    fn near(
        &self,
        index: usize,
        along: Length,
        length: Length,
    ) -> impl Iterator<Item = (usize, &Laid<'forms>)> {
        let near = self.near.between(along, along + length + self.cloth.gap);
        let others = near.iter().filter(move |(_, other)| *other != index);
        others.filter_map(|(_, other)| Some((*other, self.laid.get(*other)?)))
    }

    /// Whether a piece so long may lie on a line along the bolt.
    fn has_room(&self, along: Length, length: Length) -> bool {
        let mut stretches = self.stretches.iter();
        stretches.any(|(start, end)| *start <= along && along + length <= *end)
    }

    /// Moves every piece that lies within no stretch to where it overlaps least.
    fn pull_in(&mut self, steps: &mut Steps) -> Option<()> {
        for index in 0..self.laid.len() {
            let laid = self.laid.get(index)?;
            if !self.has_room(laid.place.along, laid.form.length) {
                let (_, place, turned) = self.best_place(index, steps)?;
                self.put(index, place, turned);
            }
        }
        Some(())
    }

    /// The pieces that overlap another.
    fn in_the_way(&self, steps: &mut Steps) -> Vec<usize> {
        steps.spend(self.laid.len());
        let overlaps = |index: &usize| self.overlaps_of(*index).next().is_some();
        (0..self.laid.len()).filter(overlaps).collect()
    }

    /// The pieces that one overlaps, and by how much.
    fn overlaps_of(&self, index: usize) -> impl Iterator<Item = (usize, Length)> {
        let the = self.laid.get(index);
        let (along, length) =
            the.map_or_else(Default::default, |the| (the.place.along, the.form.length));
        let mut denied = Vec::new();
        self.near(index, along, length)
            .filter_map(move |(other, it)| {
                let the = the?;
                denied.clear();
                let (gap, along) = (self.cloth.gap, the.place.along);
                deny(gap, it, the.lying(), along, &mut denied);
                let depths = denied.iter().map(|denied| depth(denied, the.place.across));
                let depth = depths.max().unwrap_or_default();
                depth.is_positive().then_some((other, depth))
            })
    }

    /// Moves a piece to where it overlaps least, if that is any better.
    fn relieve(&mut self, index: usize, steps: &mut Steps) {
        steps.spend(self.laid.len());
        let weights = self.weights.of(index);
        let now = self
            .overlaps_of(index)
            .map(|(other, depth)| weighed(depth, weights.get(other).copied().unwrap_or(0)))
            .fold(0, u64::saturating_add);
        if now == 0 {
            return;
        }
        if let Some((least, place, turned)) = self.best_place(index, steps)
            && least < now
        {
            self.put(index, place, turned);
        }
    }

    /// Where a piece overlaps least, and whether it is turned there.
    fn best_place(&mut self, index: usize, steps: &mut Steps) -> Option<(Weighed, Place, bool)> {
        let form = self.laid.get(index)?.form;
        let mut best: Option<(Weighed, Place, bool)> = None;
        let mut here = Vec::new();
        for (turned, grid) in form
            .any_way()
            .ways
            .iter()
            .flat_map(|turned| form.grids.iter().map(move |grid| (*turned, grid)))
        {
            let it = Lying { form, turned };
            for along in self.lines(index, it, grid) {
                let looks = self.deny_on(index, it, along, &mut here);
                steps.spend(looks.saturating_mul(form.steps()));
                steps.spend(here.len().saturating_mul(here.len()));
                let limit = best.map_or(u64::MAX, |(least, ..)| least);
                let on = Line {
                    along,
                    across: grid.across,
                    denied: &here,
                };
                if let Some((least, across)) = self.best_across(it, on, limit) {
                    best = Some((least, Place { across, along }, turned));
                    if least == 0 {
                        return best;
                    }
                }
            }
        }
        best
    }

    /// The lines along the bolt that one piece might move to.
    fn lines(&mut self, index: usize, it: Lying<'_>, grid: Grid) -> Vec<Length> {
        let length = it.form.length;
        let last = self.stretches.last().map_or(Length::ZERO, |(_, end)| *end) - length;
        let period = grid.along.period;
        let every_line = period.is_positive()
            && last - grid.along.first < period * i64::try_from(MOST_LINES).unwrap_or(0);
        let mut lines: Vec<Length> = if every_line {
            let next = |line: &Length| Some(*line + period);
            std::iter::successors(Some(grid.along.first), next)
                .take_while(|line| *line <= last)
                .collect()
        } else {
            self.contacts(index, length, grid)
        };
        lines.retain(|line| self.has_room(*line, length));
        lines.sort_unstable();
        lines.dedup();
        if lines.len() > MOST_LINES {
            self.dice.shuffle(&mut lines);
            lines.truncate(MOST_LINES);
        }
        lines
    }

    /// The lines on which a piece lies against another, a flaw or an end of a stretch.
    fn contacts(&self, index: usize, length: Length, grid: Grid) -> Vec<Length> {
        let gap = self.cloth.gap;
        let others = self.laid.iter().enumerate();
        let others = others
            .filter(|(other, _)| *other != index)
            .map(|(_, it)| (it.end() + gap, it.place.along - gap));
        let flaws = self.cloth.flaws_of(0).map(|flaw| (flaw.to, flaw.from));
        let stretches = self.stretches.iter().copied();
        let lines = others.chain(flaws).chain(stretches);
        let lines = lines.flat_map(|(after, before)| {
            [
                Some(grid.along.at_or_after(after)),
                grid.along.at_or_before(before - length),
            ]
        });
        lines.flatten().collect()
    }

    /// What the others deny to a piece on a line, with what an overlap there counts; gives how many
    /// others were looked at, and one more.
    fn deny_on(
        &self,
        index: usize,
        it: Lying<'_>,
        along: Length,
        here: &mut Vec<(Denied, u64)>,
    ) -> usize {
        here.clear();
        let mut denied = Vec::new();
        let mut looks = 1_usize;
        let weights = self.weights.of(index);
        for (other, laid) in self.near(index, along, it.form.length) {
            looks = looks.saturating_add(1);
            deny(self.cloth.gap, laid, it, along, &mut denied);
            let weight = weights.get(other).copied().unwrap_or(0);
            here.extend(denied.drain(..).map(|denied| (denied, weight)));
        }
        looks
    }

    /// The place on a line where a piece overlaps least and lies on no flaw, if that is less than
    /// `limit`.
    fn best_across(
        &self,
        it: Lying<'_>,
        on: Line<'_>,
        limit: Weighed,
    ) -> Option<(Weighed, Length)> {
        let lines = on.across;
        let last = self.cloth.usable_width - it.form.width;
        let mut flaws = Vec::new();
        deny_flaws(self.cloth, 0, it.form, on.along, &mut flaws);
        let denied = on.denied.iter().map(|(denied, _)| denied);
        let sides = denied.chain(&flaws).flat_map(|denied| {
            [
                Some(lines.at_or_after(denied.to)),
                lines.at_or_before(denied.from),
            ]
        });
        let places = [
            Some(lines.at_or_after(Length::ZERO)),
            lines.at_or_before(last),
        ];
        let mut best = None;
        let mut limit = limit;
        for across in places.into_iter().chain(sides).flatten() {
            let is_on_flaw = flaws.iter().any(|flaw| flaw.holds(across));
            if across.is_negative() || across > last || is_on_flaw {
                continue;
            }
            let mut total: Weighed = 0;
            for (denied, weight) in on.denied {
                total = total.saturating_add(weighed(depth(denied, across), *weight));
                if total >= limit {
                    break;
                }
            }
            if total < limit {
                (limit, best) = (total, Some((total, across)));
            }
        }
        best
    }

    /// Lets every overlap that is still there count for more, the deepest most.
    fn weigh(&mut self, steps: &mut Steps) {
        steps.spend(self.laid.len());
        let left: Vec<((usize, usize), Length)> = (0..self.laid.len())
            .flat_map(|index| {
                self.overlaps_of(index)
                    .filter(move |(other, _)| index < *other)
                    .map(move |(other, depth)| ((index, other), depth))
            })
            .collect();
        let deepest = left.iter().map(|(_, depth)| *depth).max();
        let deepest = u64::try_from(deepest.unwrap_or_default().nanometres()).unwrap_or(0);
        for ((one, other), depth) in left {
            let share = weighed(depth, FIRST_WEIGHT).checked_div(deepest);
            self.weights.add(one, other, share.unwrap_or(0).max(1));
        }
    }
}

/// A line along the bolt that a piece might move to.
#[derive(Copy, Clone)]
struct Line<'run> {
    along: Length,
    /// Where it may lie across.
    across: Lines,
    /// What the others deny to it there, with what an overlap counts.
    denied: &'run [(Denied, u64)],
}

/// How deep a piece lies in what is denied to it: how far it would have to move, at most.
fn depth(denied: &Denied, across: Length) -> Length {
    let sideways = (across - denied.from).min(denied.to - across);
    sideways.min(denied.shared).max(Length::ZERO)
}

fn weighed(depth: Length, weight: u64) -> Weighed {
    u64::try_from(depth.nanometres())
        .unwrap_or(0)
        .saturating_mul(weight)
}
