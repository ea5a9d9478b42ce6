//! Bands of another cloth along the edges of a panel.
//!
//! A band runs from the sewn edge inward, as deep as it is ordered; its inner line is that edge moved
//! in. As a rule it takes the place of the face there, which is cut that much smaller and has a seam
//! instead; laid on the face, it leaves the face whole. Two bands that meet at a corner are mitred.

use pelmet_measure::Length;
use pelmet_model::geometry::Vector;
use pelmet_model::{
    BandEdge, BandMade, BandOrder, BandSeamMade, Circle, Corner, Curve, Edge, EdgeKind,
    MakingMatter, OutlineMatter, Point, Shape,
};

use crate::cut::allowance::grow;

/// A panel taken apart into its face and its bands, all without allowances.
#[derive(Default)]
pub(crate) struct Banded {
    /// What is left of the face; `None` where it stays whole.
    pub(crate) face: Option<Shape>,
    /// The shape of each band.
    pub(crate) shapes: Vec<(BandEdge, Shape)>,
    pub(crate) bands: Vec<BandMade>,
}

/// Takes the bands off a panel.
///
/// # Errors
///
/// Every place where a band has no room, and one where it cannot follow the edge.
pub(crate) fn banded(order: &BandOrder, shape: &Shape) -> Result<Banded, Vec<MakingMatter>> {
    let depths: Vec<Length> = shape
        .edges
        .iter()
        .map(|edge| order.depth(edge.kind))
        .collect();
    let inward: Vec<Length> = depths.iter().map(|depth| -*depth).collect();
    let inner =
        grow(shape, &inward).map_err(|narrow| narrow.iter().map(too_deep).collect::<Vec<_>>())?;
    let kinds =
        |shape: &Shape| -> Vec<EdgeKind> { shape.edges.iter().map(|edge| edge.kind).collect() };
    let groups = groups(shape);
    // Each kind of edge lies in one run, but for the two sides.
    if kinds(&inner) != kinds(shape) || groups.len() > MOST_RUNS {
        let step = shape.edges.iter().find_map(|edge| edge.step);
        return Err(vec![MakingMatter::BandCannotFollow { step }]);
    }
    let cutter = Cutter {
        order,
        shape,
        inner: &inner,
    };
    let banded: Vec<&Group> = groups
        .iter()
        .filter(|group| order.depth(group.kind).is_positive())
        .collect();
    Ok(Banded {
        face: (!order.laid_on).then(|| face(&inner, &depths)),
        shapes: banded
            .iter()
            .map(|group| (group.edge, cutter.shape_of(group)))
            .collect(),
        bands: banded.iter().map(|group| cutter.made(group)).collect(),
    })
}

/// A top, a lower edge and two sides.
const MOST_RUNS: usize = 4;

/// A run of neighbouring edges of one kind.
struct Group {
    kind: EdgeKind,
    edge: BandEdge,
    edges: Vec<usize>,
}

fn groups(shape: &Shape) -> Vec<Group> {
    let mut groups: Vec<Group> = Vec::new();
    for (index, (edge, from, to)) in shape.runs().enumerate() {
        match groups.last_mut() {
            Some(group) if group.kind == edge.kind => group.edges.push(index),
            _ => groups.push(Group {
                kind: edge.kind,
                edge: band_edge(edge.kind, to.down > from.down),
                edges: vec![index],
            }),
        }
    }
    groups
}

fn band_edge(kind: EdgeKind, goes_down: bool) -> BandEdge {
    match kind {
        EdgeKind::Top => BandEdge::Top,
        EdgeKind::Side if goes_down => BandEdge::Left,
        EdgeKind::Side => BandEdge::Right,
        EdgeKind::Lower | EdgeKind::Band => BandEdge::Lower,
    }
}

/// What is left inside the bands, with a seam where they were.
fn face(inner: &Shape, depths: &[Length]) -> Shape {
    let mut face = inner.clone();
    for (edge, depth) in face.edges.iter_mut().zip(depths) {
        if depth.is_positive() {
            edge.kind = EdgeKind::Band;
        }
    }
    face
}

/// Cuts bands out between the sewn line and the same moved in.
struct Cutter<'a> {
    order: &'a BandOrder,
    shape: &'a Shape,
    inner: &'a Shape,
}

impl Cutter<'_> {
    /// Out along the edge, and back along the line moved in.
    fn shape_of(&self, group: &Group) -> Shape {
        let (start, end) = self.ends(group);
        let mut shape = Shape {
            corners: vec![],
            edges: vec![],
        };
        let mut push = |at: Option<Point>, edge: Edge| {
            if let Some(at) = at {
                shape.corners.push(Corner::plain(at));
                shape.edges.push(edge);
            }
        };
        for &index in &group.edges {
            if let Some(edge) = self.shape.edges.get(index) {
                push(point(self.shape, index), edge.clone());
            }
        }
        push(point(self.shape, end), self.cap(end, end));
        for &index in group.edges.iter().rev() {
            if let Some(edge) = self.inner.edges.get(index) {
                let next = self.following(index);
                push(point(self.inner, next), reversed(edge, self.inner, index));
            }
        }
        let before = self.preceding(start);
        push(point(self.inner, start), self.cap(start, before));
        shape
    }

    /// The short edge at an end of a band: a mitre where the neighbour has a band of its own, and a part
    /// of the neighbour's edge where it has none.
    fn cap(&self, at: usize, neighbour: usize) -> Edge {
        let kind = self.shape.edges.get(neighbour).map(|edge| edge.kind);
        let kind = kind.filter(|kind| self.order.depth(*kind).is_zero());
        let ends = point(self.shape, at).zip(point(self.inner, at));
        Edge {
            kind: kind.unwrap_or(EdgeKind::Band),
            length: ends.map_or(Length::ZERO, |(from, to)| {
                Vector::between(from, to).length()
            }),
            step: None,
            curve: None,
        }
    }

    fn made(&self, group: &Group) -> BandMade {
        let (_, end) = self.ends(group);
        let along = group.edges.iter().filter_map(|&index| {
            let edge = self.inner.edges.get(index)?;
            Some(BandSeamMade {
                from: point(self.inner, index)?,
                between: edge.between().to_vec(),
                to: point(self.inner, self.following(index))?,
                length: edge.length,
            })
        });
        // A mitre belongs to the band that ends in it; the next one begins there.
        let cap = self.cap(end, end);
        let mitre = (cap.kind == EdgeKind::Band).then(|| {
            let (from, to) = point(self.shape, end).zip(point(self.inner, end))?;
            Some(BandSeamMade {
                from,
                between: vec![],
                to,
                length: cap.length,
            })
        });
        let corners = group.edges.iter().copied().chain([end]);
        BandMade {
            edge: group.edge,
            depth: self.order.depth(group.kind),
            corners: corners
                .filter_map(|index| point(self.inner, index))
                .collect(),
            seams: along.chain(mitre.flatten()).collect(),
        }
    }

    /// The corners that a run of edges begins and ends at.
    fn ends(&self, group: &Group) -> (usize, usize) {
        let start = group.edges.first().copied().unwrap_or(0);
        let last = group.edges.last().copied().unwrap_or(0);
        (start, self.following(last))
    }

    fn following(&self, index: usize) -> usize {
        let next = index.saturating_add(1);
        if next < self.shape.edges.len() {
            next
        } else {
            0
        }
    }

    fn preceding(&self, index: usize) -> usize {
        let last = self.shape.edges.len().saturating_sub(1);
        index.checked_sub(1).unwrap_or(last)
    }
}

fn point(shape: &Shape, corner: usize) -> Option<Point> {
    shape.corners.get(corner).map(|corner| corner.at)
}

/// An edge of the line moved in, walked the other way. The way a curve leaves its ends is that of its
/// first and last stretch, for corners may have been cut off it.
fn reversed(edge: &Edge, shape: &Shape, index: usize) -> Edge {
    let next = index.saturating_add(1);
    let next = if next < shape.corners.len() { next } else { 0 };
    let ends = point(shape, index).zip(point(shape, next));
    let curve = edge.curve.as_ref().zip(ends).map(|(curve, (from, to))| {
        let between: Vec<Point> = curve.between.iter().rev().copied().collect();
        let first = between.first().copied().unwrap_or(from);
        let last = between.last().copied().unwrap_or(to);
        Curve {
            leaves: Vector::between(to, first),
            arrives: Vector::between(last, from),
            between,
            circle: curve.circle.map(Circle::with_cloth_beyond),
            ..*curve
        }
    });
    Edge {
        kind: EdgeKind::Band,
        curve,
        ..*edge
    }
}

fn too_deep(narrow: &OutlineMatter) -> MakingMatter {
    match *narrow {
        OutlineMatter::TooNarrow {
            step,
            width,
            needed,
        } => MakingMatter::BandTooDeep {
            step,
            room: width,
            needed,
        },
        OutlineMatter::CurveTooTight {
            step,
            radius,
            needed,
        } => MakingMatter::BandTooDeep {
            step,
            room: radius,
            needed,
        },
        _ => MakingMatter::BandCannotFollow { step: None },
    }
}
