//! The outline of a pleated panel: its flat outline parted at the creases, and every stretch laid
//! where the folding puts it.

use std::collections::BTreeMap;

use pelmet_measure::Length;
use pelmet_model::geometry::closed;
use pelmet_model::{FoldedOutline, Folding, LayerFolded, Point, StretchMade};

use crate::fold::elevation::elevation;
use crate::fold::strip::finished_at;

/// Folds a closed outline that does not cross itself.
///
/// A slanted edge is parted at each crease once, to the nearest nanometre, and both stretches keep
/// that one point; so the areas of all layers add up to that of the outline with these points in
/// it. All else is exact.
pub fn fold_outline(outline: &[Point], folding: &Folding) -> FoldedOutline {
    let creases = Creases::of(folding);
    let mut chains: BTreeMap<usize, Vec<Chain>> = BTreeMap::new();
    for chain in creases.chains(&creases.crossed(outline)) {
        let stretch = creases.stretch_of(&chain);
        chains.entry(stretch).or_default().push(chain);
    }
    let laid = chains.into_iter().filter_map(|(index, chains)| {
        let stretch = folding.stretches.get(index)?;
        Some(LayerFolded {
            stretch: index,
            height: stretch.height,
            face_up: stretch.face_up,
            parts: laid(joined(&chains), stretch),
        })
    });
    let mut layers: Vec<LayerFolded> = laid.collect();
    layers.sort_by_key(|layer| layer.height);
    FoldedOutline {
        elevation: elevation(&layers),
        layers,
    }
}

/// A run of an outline that keeps to one stretch.
type Chain = Vec<Point>;

/// The creases' flat positions, from left to right.
struct Creases(Vec<Length>);

impl Creases {
    fn of(folding: &Folding) -> Self {
        let between = folding.stretches.iter().skip(1);
        Self(between.map(|stretch| stretch.flat_from).collect())
    }

    fn lies_on(&self, point: Point) -> bool {
        self.0.binary_search(&point.across).is_ok()
    }

    /// The outline with a point wherever it crosses a crease.
    fn crossed(&self, outline: &[Point]) -> Vec<Point> {
        let edges = closed(outline);
        edges
            .flat_map(|(from, to)| [from].into_iter().chain(self.crossings(from, to)))
            .collect()
    }

    /// Where an edge crosses creases on its way.
    fn crossings(&self, from: Point, to: Point) -> Vec<Point> {
        let (left, right) = (from.across.min(to.across), from.across.max(to.across));
        let after_left = self.0.partition_point(|crease| *crease <= left);
        let before_right = self.0.partition_point(|crease| *crease < right);
        let between = self.0.get(after_left..before_right).unwrap_or_default();
        let crossing = |&across: &Length| Point {
            across,
            down: down_at(across, from, to),
        };
        let mut points: Vec<Point> = between.iter().map(crossing).collect();
        // Creases lie in order from the left; the edge may be walked the other way. Two creases of one place
        // are one crossing: the stretch between them has no cloth.
        points.dedup();
        if to.across < from.across {
            points.reverse();
        }
        points
    }

    /// The runs of an outline between its points on creases. Edges along a crease are left out:
    /// [`joined`] puts them back on the side of the crease that has cloth beside them.
    fn chains(&self, outline: &[Point]) -> Vec<Chain> {
        let mut points = outline.to_vec();
        let start = points.iter().position(|point| self.lies_on(*point));
        points.rotate_left(start.unwrap_or(0));
        let edges: Vec<(Point, Point)> = closed(&points).collect();
        let runs = edges.chunk_by(|(_, end), _| !self.lies_on(*end));
        runs.filter(|run| !self.lies_along_crease(run))
            .map(|run| {
                let start = run.first().map(|(from, _)| *from);
                start
                    .into_iter()
                    .chain(run.iter().map(|(_, to)| *to))
                    .collect()
            })
            .collect()
    }

    fn lies_along_crease(&self, run: &[(Point, Point)]) -> bool {
        matches!(run, [(from, to)] if from.across == to.across && self.lies_on(*from))
    }

    /// The stretch a chain keeps to.
    fn stretch_of(&self, chain: &Chain) -> usize {
        let left = chain.iter().map(|point| point.across).min();
        let left = left.unwrap_or_default();
        self.0.partition_point(|crease| *crease <= left)
    }
}

/// How far down an edge that is not upright lies at a position across, to the nearest nanometre.
pub(crate) fn down_at(across: Length, from: Point, to: Point) -> Length {
    let part = (across - from.across).ratio_to(to.across - from.across);
    let fall = to.down - from.down;
    from.down + part.map_or(Length::ZERO, |part| fall.scaled(part))
}

/// Closes the chains of one stretch along its creases.
///
/// Going along a crease, cloth begins and ends in turn. A line that does not cross itself has its
/// cloth always on the same hand, so on one crease the ends of chains all lie at beginnings of
/// cloth and the starts at its ends, or the other way about: the first end belongs to the first
/// start.
fn joined(chains: &[Chain]) -> Vec<Vec<Point>> {
    // Each chain is followed by the one that begins where its cloth goes on along the crease, until it
    // comes round to the first. A stretch out of which a notch is cut, or that a wavy edge leaves and
    // enters again, has several such rounds.
    let mut following = followers(chains);
    let mut parts = Vec::new();
    while let Some((first, mut next)) = following.pop_first() {
        let mut part = chains.get(first).cloned().unwrap_or_default();
        while next != first {
            part.extend(chains.get(next).into_iter().flatten());
            next = following.remove(&next).unwrap_or(first);
        }
        part.dedup();
        if part.first() == part.last() {
            part.pop();
        }
        parts.push(part);
    }
    parts
}

/// For each chain the one that goes on from its end.
fn followers(chains: &[Chain]) -> BTreeMap<usize, usize> {
    let in_order_of = |place: fn(&Chain) -> Option<&Point>| {
        let mut order: Vec<usize> = (0..chains.len()).collect();
        order.sort_by_key(|index| chains.get(*index).and_then(place));
        order
    };
    let ends = in_order_of(|chain| chain.last());
    let starts = in_order_of(|chain| chain.first());
    ends.into_iter().zip(starts).collect()
}

/// Puts flat outlines where their stretch hangs.
fn laid(mut parts: Vec<Vec<Point>>, stretch: &StretchMade) -> Vec<Vec<Point>> {
    for point in parts.iter_mut().flatten() {
        point.across = finished_at(stretch, point.across);
    }
    parts
}
