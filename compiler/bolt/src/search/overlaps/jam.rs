//! Pieces that may overlap, and what their overlaps count.

use pelmet_measure::Length;

use super::weights::{FIRST_WEIGHT, Weights, weighed};
use crate::given::LayoutCloth;
use crate::layout::Orientation;
use crate::places::Place;
use crate::search::dice::Dice;
use crate::search::end_to_end::Stretch;
use crate::search::forms::{Laid, NoFitAcross, deny};
use crate::search::near::Near;
use crate::search::steps::Steps;

/// Pieces that may overlap, all on one bolt.
pub(super) struct Jam<'run, 'forms> {
    pub cloth: &'run LayoutCloth,
    /// Where pieces may lie, in order.
    pub stretches: &'run [Stretch],
    pub laid: Vec<Laid<'forms>>,
    /// Which of them lie where along the bolt.
    near: Near,
    pub weights: Weights,
    pub dice: &'run mut Dice,
}

impl<'run, 'forms> Jam<'run, 'forms> {
    /// These pieces, to lie within one of the stretches, as they lie at first.
    pub(super) fn of(
        cloth: &'run LayoutCloth,
        laid: &[Laid<'forms>],
        stretches: &'run [Stretch],
        dice: &'run mut Dice,
    ) -> Jam<'run, 'forms> {
        let longest = laid.iter().map(|laid| laid.form.length).max();
        let mut near = Near::none(longest.unwrap_or_default() + cloth.gap);
        for (index, laid) in laid.iter().enumerate() {
            near.add(laid.place.along, index);
        }
        Jam {
            cloth,
            stretches,
            laid: laid.to_vec(),
            near,
            weights: Weights::first(laid.len()),
            dice,
        }
    }

    /// All pieces as they lie.
    pub(super) fn into_laid(self) -> Vec<Laid<'forms>> {
        self.laid
    }

    /// Puts pieces, by index, in an order without a pattern.
    pub(super) fn shuffle(&mut self, pieces: &mut [usize]) {
        self.dice.shuffle(pieces);
    }

    /// Moves a piece.
    pub(super) fn put(&mut self, index: usize, place: Place, orientation: Orientation) {
        if let Some(laid) = self.laid.get_mut(index) {
            self.near.remove(laid.place.along, index);
            self.near.add(place.along, index);
            (laid.place, laid.orientation) = (place, orientation);
        }
    }

    /// The other pieces that may lie partly where one would, with the gap on both sides.
    pub(super) fn near(
        &self,
        index: usize,
        along: Length,
        length: Length,
    ) -> impl Iterator<Item = (usize, &Laid<'forms>)> {
        let near = self.near.between(along, along + length + self.cloth.gap);
        let others = near.iter().filter(move |(_, other)| *other != index);
        others.filter_map(|(_, other)| Some((*other, self.laid.get(*other)?)))
    }

    /// The pieces that overlap another.
    pub(super) fn in_the_way(&self, steps: &mut Steps) -> Vec<usize> {
        steps.spend(self.laid.len());
        let overlaps = |index: &usize| self.overlaps_of(*index).next().is_some();
        (0..self.laid.len()).filter(overlaps).collect()
    }

    /// The pieces that one overlaps, and by how much.
    pub(super) fn overlaps_of(&self, index: usize) -> impl Iterator<Item = (usize, Length)> {
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

    /// Lets every overlap that is still there count for more, the deepest most.
    ///
    /// What it gains is taken as a part of the deepest, so that the same jam gains the same whatever its
    /// scale, and never less than one, so that none stays as it is for ever.
    pub(super) fn weigh(&mut self, steps: &mut Steps) {
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

/// How deep a piece lies in what is denied to it: how far it would have to move, at most, to be out of it
/// (nesting calls it the penetration depth). Sideways the way out is exact; along the bolt it is no more
/// than the length that the two share. It is depth and not area that counts because a long thin overlap
/// is undone by a short move.
pub(super) fn depth(denied: &NoFitAcross, across: Length) -> Length {
    let sideways = (across - denied.from).min(denied.to - across);
    sideways.min(denied.shared).max(Length::ZERO)
}
