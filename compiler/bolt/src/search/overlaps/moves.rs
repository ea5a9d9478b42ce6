//! Where a piece of the jam may move to, and where it overlaps least.

use pelmet_measure::Length;

use super::jam::{Jam, depth};
use super::weights::{Weighed, weighed};
use crate::layout::Orientation;
use crate::places::{Grid, Place, PrintLines};
use crate::search::forms::{Lying, NoFitAcross, deny, deny_flaws};
use crate::search::steps::Steps;

/// How many lines along the bolt are looked at for one move; out of more, some are thrown.
const MOST_LINES: usize = 40;

/// A line along the bolt that a piece might move to.
#[derive(Copy, Clone)]
struct Line<'run> {
    along: Length,
    /// Where it may lie across.
    across: PrintLines,
    /// What the others deny to it there, with what an overlap counts.
    denied: &'run [(NoFitAcross, u64)],
}

impl Jam<'_, '_> {
    /// Moves every piece that lies within no stretch to where it overlaps least.
    pub(super) fn pull_in(&mut self, steps: &mut Steps) -> Option<()> {
        for index in 0..self.laid.len() {
            let laid = self.laid.get(index)?;
            if !self.has_room(laid.place.along, laid.form.length) {
                let (_, place, orientation) = self.best_place(index, steps)?;
                self.put(index, place, orientation);
            }
        }
        Some(())
    }

    /// Moves a piece to where it overlaps least, if that is any better.
    pub(super) fn relieve(&mut self, index: usize, steps: &mut Steps) {
        steps.spend(self.laid.len());
        let weights = self.weights.of(index);
        let now = self
            .overlaps_of(index)
            .map(|(other, depth)| weighed(depth, weights.get(other).copied().unwrap_or(0)))
            .fold(0, u64::saturating_add);
        if now == 0 {
            return;
        }
        if let Some((least, place, orientation)) = self.best_place(index, steps)
            && least < now
        {
            self.put(index, place, orientation);
        }
    }

    /// Where a piece overlaps least, and which way up; `None` where it is too long for all stretches.
    ///
    /// Every line along the bolt is looked at on its own, as what is denied there are a few intervals
    /// across. What is found so far limits what is looked for next, and a place without any overlap ends
    /// the look.
    fn best_place(
        &mut self,
        index: usize,
        steps: &mut Steps,
    ) -> Option<(Weighed, Place, Orientation)> {
        let form = self.laid.get(index)?.form;
        let mut best: Option<(Weighed, Place, Orientation)> = None;
        let mut here = Vec::new();
        for (orientation, grid) in form
            .any_way()
            .ways
            .iter()
            .flat_map(|way| form.grids.iter().map(move |grid| (*way, grid)))
        {
            let it = Lying { form, orientation };
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
                    best = Some((least, Place { across, along }, orientation));
                    if least == 0 {
                        return best;
                    }
                }
            }
        }
        best
    }

    /// The lines along the bolt that one piece might move to.
    ///
    /// Where the print leaves few, all of them. Else those on which it lies against something, for where a
    /// piece overlaps least it nearly always does: moved along until it touches, it overlaps no more. Of
    /// too many some are thrown, others each time, so that in the end every line has its turn.
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

    /// The lines on which a piece lies against another, a flaw or an end of a stretch: before it or
    /// behind it, or on the line of the print that is nearest to that.
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

    /// Whether a piece so long may lie on a line along the bolt.
    fn has_room(&self, along: Length, length: Length) -> bool {
        let mut stretches = self.stretches.iter();
        stretches.any(|(start, end)| *start <= along && along + length <= *end)
    }

    /// What the others deny to a piece on a line, with what an overlap there counts; gives how many
    /// others were looked at, and one more.
    fn deny_on(
        &self,
        index: usize,
        it: Lying<'_>,
        along: Length,
        here: &mut Vec<(NoFitAcross, u64)>,
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
    ///
    /// From left to right the depth in one interval grows until its middle and falls again. So from one
    /// end of an interval to the next, all depths together, weighed, are a concave function of the place,
    /// which is least at one of the two: no places but these and the edges of the cloth need be looked at.
    /// Where the print holds the piece they are its lines next outside each interval, which come close.
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
}
