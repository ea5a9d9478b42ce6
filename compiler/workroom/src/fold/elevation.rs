//! What is seen of a pleated panel from the front: its lower edge, and where its lining shows.

use std::collections::{BTreeMap, BTreeSet};

use pelmet_measure::Length;
use pelmet_model::geometry::{Vector, closed};
use pelmet_model::{Elevation, LayerFolded, LiningShown, Point};

use crate::fold::outline::down_at;
use crate::rounding::ROUNDING;

/// How often two edges are compared before a panel is given up as too thickly folded to be drawn.
/// A panel of two thousand plain pleats takes less than a tenth of this.
const MOST_COMPARED: usize = 20_000_000;

fn is_too_much(compared: usize) -> bool {
    compared > MOST_COMPARED
}

/// Looks at layers that lie from the back to the front.
///
/// The finished width is cut into slices in which no edge ends and no two edges cross; there the
/// layers lie over one another in an order that does not change.
pub(crate) fn elevation(layers: &[LayerFolded]) -> Option<Elevation> {
    let edges = edges_of(layers);
    let breaks: BTreeSet<Length> = edges.iter().flat_map(Edge::ends).collect();
    let mut coming = edges.iter().peekable();
    let mut over: Vec<&Edge> = Vec::new();
    let mut view = View::default();
    let mut compared: usize = 0;
    for (from, to) in breaks.iter().copied().zip(breaks.iter().skip(1).copied()) {
        over.retain(|edge| edge.right.across > from);
        while let Some(edge) = coming.next_if(|edge| edge.left.across <= from) {
            over.push(edge);
        }
        let pairs = over.len().saturating_mul(over.len());
        compared = compared.saturating_add(pairs);
        if is_too_much(compared) {
            return None;
        }
        let slices = slices(&over, from, to);
        compared = compared.saturating_add(pairs.saturating_mul(slices.len()));
        for (left, right) in slices {
            view.look(&over, left, right);
        }
    }
    Some(view.seen())
}

/// An edge of a layer that is not upright, and which layer it is of.
#[derive(Copy, Clone, Debug)]
struct Edge {
    left: Point,
    right: Point,
    layer: usize,
    stretch: usize,
    face_up: bool,
}

impl Edge {
    fn ends(&self) -> [Length; 2] {
        [self.left.across, self.right.across]
    }

    fn down_at(&self, across: Length) -> Length {
        down_at(across, self.left, self.right)
    }
}

/// All edges that are not upright, by their left ends.
fn edges_of(layers: &[LayerFolded]) -> Vec<Edge> {
    let mut edges = Vec::new();
    for (index, layer) in layers.iter().enumerate() {
        for (from, to) in layer.parts.iter().flat_map(|part| closed(part)) {
            if from.across != to.across {
                edges.push(Edge {
                    left: from.min(to),
                    right: from.max(to),
                    layer: index,
                    stretch: layer.stretch,
                    face_up: layer.face_up,
                });
            }
        }
    }
    edges.sort_by_key(|edge| (edge.left, edge.layer));
    edges
}

/// Parts a run where edges over it cross.
fn slices(over: &[&Edge], from: Length, to: Length) -> Vec<(Length, Length)> {
    // Between two breaks no edge begins or ends, but two may still cross. Which of them is lower then
    // changes on the way, and with it what is seen: so the run is parted at every crossing, and within a
    // slice "lower" has one answer, read off in its middle.
    let falls: Vec<(Length, Length)> = over
        .iter()
        .map(|edge| (edge.down_at(from), edge.down_at(to)))
        .collect();
    let mut breaks = BTreeSet::from([from, to]);
    for (index, one) in falls.iter().enumerate() {
        for other in falls.iter().skip(index.saturating_add(1)) {
            let (before, after) = (one.0 - other.0, one.1 - other.1);
            if (before.is_negative() && after.is_positive())
                || (before.is_positive() && after.is_negative())
            {
                let part = before.ratio_to(before - after);
                breaks.extend(part.map(|part| from + (to - from).scaled(part)));
            }
        }
    }
    let ends = breaks.iter().skip(1).copied();
    breaks.iter().copied().zip(ends).collect()
}

/// How far down an edge lies at both ends of a slice.
#[derive(Copy, Clone, Debug)]
struct Level<'a> {
    edge: &'a Edge,
    left: Length,
    right: Length,
}

impl Level<'_> {
    /// Twice how far down it lies in the middle of the slice.
    fn middle(&self) -> Length {
        self.left + self.right
    }
}

/// Cloth of one layer in a slice, from one level down to another.
type Cloth<'a> = (Level<'a>, Level<'a>);

/// What was seen so far, slice by slice from the left.
#[derive(Default)]
struct View {
    lower_edge: Vec<Point>,
    showing: BTreeMap<usize, LiningShown>,
    lining: Vec<LiningShown>,
}

impl View {
    fn look(&mut self, over: &[&Edge], from: Length, to: Length) {
        let cloths = from_the_front(over, from, to);
        let bottoms = cloths.iter().map(|(_, bottom)| bottom);
        if let Some(lowest) = bottoms.max_by_key(|bottom| bottom.middle()) {
            self.add_lower(from, lowest.left);
            self.add_lower(to, lowest.right);
        }
        if to - from <= ROUNDING {
            return;
        }
        for (index, cloth) in cloths.iter().enumerate() {
            let of = cloth.0.edge;
            if !of.face_up {
                let in_front = cloths.get(..index).unwrap_or_default();
                for seen in uncovered(*cloth, in_front) {
                    self.add_lining(of.stretch, seen, (from, to));
                }
            }
        }
    }

    /// Adds a point to the lower edge; one before it that only lay on the way is dropped.
    fn add_lower(&mut self, across: Length, down: Length) {
        let point = Point { across, down };
        if let [.., before, last] = self.lower_edge.as_slice() {
            let (so_far, onward) = (
                Vector::between(*before, *last),
                Vector::between(*last, point),
            );
            if lies_straight(so_far, onward) {
                self.lower_edge.pop();
            }
        }
        if self.lower_edge.last() != Some(&point) {
            self.lower_edge.push(point);
        }
    }

    fn add_lining(&mut self, stretch: usize, (top, bottom): Cloth<'_>, across: (Length, Length)) {
        let (left, right) = (bottom.left - top.left, bottom.right - top.right);
        if left.max(right) <= ROUNDING {
            return;
        }
        let now = LiningShown {
            across,
            down: (top.left.min(top.right), bottom.left.max(bottom.right)),
            stretch,
        };
        let Some(before) = self.showing.insert(stretch, now) else {
            return;
        };
        if across.0 - before.across.1 > ROUNDING {
            self.lining.push(before);
            return;
        }
        let both = LiningShown {
            across: (before.across.0, across.1),
            down: (before.down.0.min(now.down.0), before.down.1.max(now.down.1)),
            stretch,
        };
        self.showing.insert(stretch, both);
    }

    fn seen(self) -> Elevation {
        let mut lining = self.lining;
        lining.extend(self.showing.into_values());
        lining.sort_unstable();
        Elevation {
            lower_edge: self.lower_edge,
            lining,
        }
    }
}

/// Whether a line goes on as it came, to the nanometre by which a slanted edge may be rounded.
fn lies_straight(so_far: Vector, onward: Vector) -> bool {
    let longer = so_far.length().max(onward.length()).nanometres();
    so_far.dot(onward) >= 0 && so_far.cross(onward).abs() <= i128::from(longer)
}

/// The cloth in a slice, of the front layer first.
fn from_the_front<'a>(over: &[&'a Edge], from: Length, to: Length) -> Vec<Cloth<'a>> {
    let mut levels: Vec<Level<'a>> = over
        .iter()
        .map(|edge| Level {
            edge,
            left: edge.down_at(from),
            right: edge.down_at(to),
        })
        .collect();
    // From the top down, an upright line through one layer enters its cloth and leaves it by turns, since
    // a closed outline is crossed an even number of times: edges go in pairs, top and bottom.
    levels.sort_by_key(|level| (std::cmp::Reverse(level.edge.layer), level.middle()));
    let by_layer = levels.chunk_by(|one, next| one.edge.layer == next.edge.layer);
    let pairs = by_layer.flat_map(|levels| levels.chunks_exact(2));
    pairs
        .filter_map(|pair| Some((*pair.first()?, *pair.last()?)))
        .collect()
}

/// What of a cloth is left to see with others in front of it.
fn uncovered<'a>(cloth: Cloth<'a>, in_front: &[Cloth<'a>]) -> Vec<Cloth<'a>> {
    in_front.iter().fold(vec![cloth], |left, cover| {
        left.into_iter()
            .flat_map(|cloth| beside(cloth, *cover))
            .collect()
    })
}

/// The parts of a cloth above and below one that covers it.
fn beside<'a>((top, bottom): Cloth<'a>, cover: Cloth<'a>) -> impl Iterator<Item = Cloth<'a>> {
    let above = (top, higher(bottom, cover.0));
    let below = (lower(top, cover.1), bottom);
    let is_any = |(top, bottom): &Cloth<'a>| top.middle() < bottom.middle();
    [above, below].into_iter().filter(is_any)
}

fn higher<'a>(one: Level<'a>, other: Level<'a>) -> Level<'a> {
    if other.middle() < one.middle() {
        other
    } else {
        one
    }
}

fn lower<'a>(one: Level<'a>, other: Level<'a>) -> Level<'a> {
    if other.middle() > one.middle() {
        other
    } else {
        one
    }
}
