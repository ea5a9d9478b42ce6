//! Folding a flat strip at its creases: one model for every kind of pleat.

use std::collections::BTreeSet;

use pelmet_measure::Length;

use crate::pleating::ROUNDING;
use crate::{Crease, Folding, LayerRun, Stretch};

/// Folds a flat strip at its creases.
///
/// With g the finished position of a flat position, g(0) = 0, g' = +1 before the first crease, and
/// the sign turns at every crease. From a stretch that lies face up, a valley lays the next one
/// directly on top of it and a mountain directly beneath; from a turned one it is the other way
/// round. Nothing here knows a knife pleat from a box pleat.
///
/// Creases are taken from left to right whatever their order; those off the strip are left out.
/// [`Folding::thickest`] passes over runs too narrow to be anything but rounding.
pub fn fold(flat: Length, creases: &[Crease]) -> Folding {
    let creases = creases_on_strip(flat, creases);
    let mut stretches = stretches_between(flat, &creases);
    stack(&mut stretches, &creases);
    let layers = layer_runs(&stretches);
    Folding {
        finished: stretches
            .last()
            .map_or(Length::ZERO, |last| last.finished_to),
        leftmost: layers.first().map_or(Length::ZERO, |run| run.from),
        rightmost: layers.last().map_or(Length::ZERO, |run| run.to),
        thickest: thickest(&layers),
        stretches,
        layers,
    }
}

/// Whether a flat position lies on a stretch, or a part of one, that is not seen at its finished
/// position. A position at the very edge of what is seen counts as seen; one off the strip is not
/// hidden.
pub fn is_hidden(folding: &Folding, flat_at: Length) -> bool {
    let mut on_strip = false;
    for (index, stretch) in stretches_at(folding, flat_at) {
        on_strip = true;
        if is_on_top(folding, index, stretch.finished_at(flat_at)) {
            return false;
        }
    }
    on_strip
}

impl Stretch {
    /// The finished position of a flat position on this stretch.
    pub fn finished_at(&self, flat_at: Length) -> Length {
        let along = flat_at - self.flat_from;
        if self.face_up {
            self.finished_from + along
        } else {
            self.finished_from - along
        }
    }

    /// The finished positions it lies over, left end first.
    pub fn span(&self) -> (Length, Length) {
        let (one, other) = (self.finished_from, self.finished_to);
        (one.min(other), one.max(other))
    }
}

fn creases_on_strip(flat: Length, creases: &[Crease]) -> Vec<Crease> {
    let on_strip = |crease: &&Crease| (Length::ZERO..=flat).contains(&crease.at);
    let mut creases: Vec<Crease> = creases.iter().filter(on_strip).copied().collect();
    creases.sort_by_key(|crease| crease.at);
    creases
}

fn stretches_between(flat: Length, creases: &[Crease]) -> Vec<Stretch> {
    let mut stretches = Vec::new();
    let (mut flat_from, mut finished_from, mut face_up) = (Length::ZERO, Length::ZERO, true);
    for flat_to in creases.iter().map(|crease| crease.at).chain([flat]) {
        let mut stretch = Stretch {
            flat_from,
            flat_to,
            finished_from,
            finished_to: finished_from,
            face_up,
            height: 0,
        };
        stretch.finished_to = stretch.finished_at(flat_to);
        stretches.push(stretch);
        (flat_from, finished_from, face_up) = (flat_to, stretch.finished_to, !face_up);
    }
    stretches
}

/// Gives every stretch its height. Each is laid against the one before it, so a stack only ever
/// opens at that place.
fn stack(stretches: &mut [Stretch], creases: &[Crease]) {
    let mut order = vec![0];
    let mut place: usize = 0;
    for (next, (crease, before)) in (1..).zip(creases.iter().zip(stretches.iter())) {
        let on_top = before.face_up != crease.mountain;
        place = place.saturating_add(usize::from(on_top));
        order.insert(place, next);
    }
    for (height, index) in order.into_iter().enumerate() {
        if let Some(stretch) = stretches.get_mut(index) {
            stretch.height = height;
        }
    }
}

/// Sweeps the finished positions from left to right, with the set of stretches lying at each. A
/// stretch enters the set at one of its ends and leaves it at the other.
fn layer_runs(stretches: &[Stretch]) -> Vec<LayerRun> {
    let mut ends: Vec<(Length, (usize, usize))> = Vec::new();
    for (index, stretch) in stretches.iter().enumerate() {
        let layer = (stretch.height, index);
        ends.extend([(stretch.finished_from, layer), (stretch.finished_to, layer)]);
    }
    ends.sort_unstable();
    let mut runs = Vec::new();
    let mut lying = BTreeSet::new();
    let mut from = Length::ZERO;
    for (to, layer) in ends {
        if let Some(&(_, top)) = lying.last()
            && to > from
        {
            let layers = u32::try_from(lying.len()).unwrap_or(u32::MAX);
            push_run(
                &mut runs,
                LayerRun {
                    from,
                    to,
                    layers,
                    top,
                },
            );
        }
        from = to;
        if !lying.remove(&layer) {
            lying.insert(layer);
        }
    }
    runs
}

fn push_run(runs: &mut Vec<LayerRun>, run: LayerRun) {
    match runs.last_mut() {
        Some(last) if (last.layers, last.top) == (run.layers, run.top) => last.to = run.to,
        _ => runs.push(run),
    }
}

fn thickest(layers: &[LayerRun]) -> u32 {
    let wide = layers.iter().filter(|run| run.to - run.from > ROUNDING);
    wide.map(|run| run.layers).max().unwrap_or(0)
}

/// The stretches that hold a flat position: two at a crease.
fn stretches_at(folding: &Folding, flat_at: Length) -> impl Iterator<Item = (usize, &Stretch)> {
    let before = folding
        .stretches
        .partition_point(|stretch| stretch.flat_to < flat_at);
    let from_here = folding.stretches.iter().enumerate().skip(before);
    from_here.take_while(move |(_, stretch)| stretch.flat_from <= flat_at)
}

fn is_on_top(folding: &Folding, index: usize, finished_at: Length) -> bool {
    let before = folding.layers.partition_point(|run| run.to < finished_at);
    let from_here = folding.layers.iter().skip(before);
    from_here
        .take_while(|run| run.from <= finished_at)
        .any(|run| run.top == index)
}
