//! Folding a flat strip at its creases: one model for every kind of pleat.

use std::collections::BTreeSet;

use pelmet_measure::Length;
use pelmet_model::{CreaseKind, CreaseMade, Drawn, Folding, LayerRun, Lies, Pleating, StretchMade};

use crate::rounding::ROUNDING;

/// Folds a flat strip at its creases.
///
/// With g the finished position of a flat position, g(0) = 0, g' = +1 before the first crease, and
/// the sign turns at every crease. Where a crease loses cloth in its turn, half on either side, g
/// stands still. From a stretch that lies face up, a valley lays the next one
/// directly on top of it and a mountain directly beneath; from a turned one it is the other way
/// round. Nothing here knows a knife pleat from a box pleat.
///
/// Creases are taken from left to right whatever their order; those off the strip are left out.
/// [`Folding::thickest`] passes over runs too narrow to be anything but rounding.
pub fn fold(flat: Length, creases: &[CreaseMade]) -> Folding {
    fold_pleating(&Pleating {
        flat,
        creases: creases.to_vec(),
        ..Pleating::default()
    })
}

/// Folds a strip at its creases, as [`fold`] does, with the cloth that its pleats draw up.
///
/// Along a drawn run g' is what the run keeps over its flat width: it goes on where it was, faster
/// or slower, and lies over what comes before it.
pub fn fold_pleating(pleating: &Pleating) -> Folding {
    let joints = joints(pleating);
    let mut stretches = stretches_between(pleating.flat, &joints);
    stack(&mut stretches, &joints);
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
/// hidden. Of cloth drawn up only what stands between fingers is hidden.
pub fn is_hidden(folding: &Folding, flat_at: Length) -> bool {
    let mut on_strip = false;
    for (index, stretch) in stretches_at(folding, flat_at) {
        on_strip = true;
        let seen = match stretch.lies {
            Lies::Flat => is_on_top(folding, index, finished_at(stretch, flat_at)),
            Lies::Drawn => true,
            Lies::BetweenFingers => false,
        };
        if seen {
            return false;
        }
    }
    on_strip
}

/// The finished position of a flat position on a stretch; in a turn, that of the crease.
pub fn finished_at(stretch: &StretchMade, flat_at: Length) -> Length {
    let along = flat_at - stretch.flat_from - stretch.turn_from;
    let along = drawn_up(stretch, along.max(Length::ZERO).min(stretch.laid()));
    if stretch.face_up {
        stretch.finished_from + along
    } else {
        stretch.finished_from - along
    }
}

/// What a part of a flat stretch comes to once drawn up.
fn drawn_up(stretch: &StretchMade, along: Length) -> Length {
    let keeps = (stretch.finished_to - stretch.finished_from).abs();
    keeps
        .ratio_to(stretch.laid())
        .map_or(along, |kept| along.scaled(kept))
}

/// Where one stretch of the strip ends and the next begins.
#[derive(Copy, Clone)]
struct Joint {
    at: Length,
    /// The crease there; none where a drawn run begins or ends.
    crease: Option<CreaseMade>,
    /// What is lost on either side of it: half a turn.
    half_turn: Length,
    /// The drawn run that begins there.
    drawn: Option<Drawn>,
}

fn joints(pleating: &Pleating) -> Vec<Joint> {
    let half_turn = |crease: &CreaseMade| {
        let pleat = pleating.pleats.get(crease.pleat);
        pleat.map_or(Length::ZERO, |pleat| pleat.turn.divided(2))
    };
    let creases = pleating.creases.iter().map(|crease| Joint {
        at: crease.at,
        crease: Some(*crease),
        half_turn: half_turn(crease),
        drawn: None,
    });
    let drawn = pleating.drawn.iter().flat_map(|run| {
        let end = |at, drawn| Joint {
            at,
            crease: None,
            half_turn: Length::ZERO,
            drawn,
        };
        [end(run.from, Some(*run)), end(run.to, None)]
    });
    let on_strip = |joint: &Joint| (Length::ZERO..=pleating.flat).contains(&joint.at);
    let mut joints: Vec<Joint> = creases.chain(drawn).filter(on_strip).collect();
    joints.sort_by_key(|joint| joint.at);
    joints
}

fn stretches_between(flat: Length, joints: &[Joint]) -> Vec<StretchMade> {
    let mut stretches = Vec::new();
    let (mut finished_from, mut face_up) = (Length::ZERO, true);
    let mut from = edge(Length::ZERO);
    for joint in joints.iter().copied().chain([edge(flat)]) {
        let stretch = StretchMade {
            flat_from: from.at,
            flat_to: joint.at,
            turn_from: from.half_turn,
            turn_to: joint.half_turn,
            finished_from,
            finished_to: finished_from,
            face_up,
            lies: lies(from.drawn),
            height: 0,
        };
        let keeps = from.drawn.map_or(stretch.laid(), |run| run.keeps);
        let finished_to = finished_from + if face_up { keeps } else { -keeps };
        stretches.push(StretchMade {
            finished_to,
            ..stretch
        });
        (from, finished_from) = (joint, finished_to);
        face_up ^= joint.crease.is_some();
    }
    stretches
}

/// An end of the strip.
fn edge(at: Length) -> Joint {
    Joint {
        at,
        crease: None,
        half_turn: Length::ZERO,
        drawn: None,
    }
}

fn lies(drawn: Option<Drawn>) -> Lies {
    match drawn {
        None => Lies::Flat,
        Some(run) if run.between_fingers => Lies::BetweenFingers,
        Some(_) => Lies::Drawn,
    }
}

/// Gives every stretch its height. Each is laid against the one before it, so a stack only ever
/// opens at that place.
fn stack(stretches: &mut [StretchMade], joints: &[Joint]) {
    // `order` is the stack from the back to the front, by the number of the stretch. The next stretch is
    // put in right beside the one before it, never at the top or the bottom of all: paper folded at one
    // crease can only lie directly on or under what it is joined to, and whatever was pushed in between
    // earlier is pushed away by it. Nothing here asks whether a crease would have to pass through a layer.
    let mut order = vec![0];
    let mut place: usize = 0;
    for (next, (joint, before)) in (1..).zip(joints.iter().zip(stretches.iter())) {
        // Seen from the front, a valley closes toward the viewer while the cloth before it shows its face.
        // Once that cloth is turned over the same valley is a ridge from where it lies, so the two swap.
        // Where no crease parts two stretches the cloth only begins to be drawn up, and goes on in front.
        let on_top = joint
            .crease
            .is_none_or(|crease| before.face_up != (crease.kind == CreaseKind::Mountain));
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
fn layer_runs(stretches: &[StretchMade]) -> Vec<LayerRun> {
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
        // A stretch folded back has its right end first on the flat strip, so either end may come first
        // here: the first time a stretch is met it begins to lie there, the second time it ends.
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
fn stretches_at(folding: &Folding, flat_at: Length) -> impl Iterator<Item = (usize, &StretchMade)> {
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
