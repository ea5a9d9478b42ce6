//! What can be asked of a made-up shape.

use pelmet_measure::{Area, Length};

use crate::curve::FLATTENING;
use crate::geometry::doubled_area;
use crate::{Corner, Curve, Edge, Point, Shape};

const NANOMETRE: Length = Length::from_nanometres(1);

/// A turn is called a corner where it leaves the straight by more than one part in this many,
/// about five degrees. Common practice, no source: less opens and turns without help.
pub const LEAST_TURN: i128 = 12;

impl Shape {
    /// The area inside.
    pub fn area(&self) -> Area {
        Area::from_square_nanometres(doubled_area(&self.polygon()).saturating_abs() >> 1)
    }

    /// The top left and the lower right corner of the rectangle it just fits into.
    pub fn bounds(&self) -> (Point, Point) {
        let points = self.polygon();
        let origin = Point {
            across: Length::ZERO,
            down: Length::ZERO,
        };
        let first = points.first().copied().unwrap_or(origin);
        points
            .into_iter()
            .fold((first, first), |(least, most), point| {
                let (across, down) = (point.across, point.down);
                (
                    Point {
                        across: least.across.min(across),
                        down: least.down.min(down),
                    },
                    Point {
                        across: most.across.max(across),
                        down: most.down.max(down),
                    },
                )
            })
    }

    /// Each edge with the corners it runs between.
    pub fn runs(&self) -> impl Iterator<Item = (&Edge, Point, Point)> {
        let ends = self.corners.iter().cycle().skip(1);
        let starts = self.corners.iter().zip(ends);
        self.edges
            .iter()
            .zip(starts)
            .map(|(edge, (from, to))| (edge, from.at, to.at))
    }

    /// Whether the right half is the mirror image of the left: straight edges to the nanometre an
    /// odd width leaves over, curves as nearly as their points stand for them.
    pub fn has_like_halves(&self) -> bool {
        let (least, most) = self.bounds();
        let is_image = |one: Point, other: Point, within: Length| {
            let sum = one.across + other.across - least.across - most.across;
            (one.down - other.down).abs() <= within - NANOMETRE && sum.abs() <= within
        };
        let curve_within = Length::from_millimetres_f64(FLATTENING * 2.0).unwrap_or(NANOMETRE);
        let corners = self.corners.iter().zip(self.corners.iter().rev());
        // The top edge is the last one and its own image.
        let (edges, images) = (self.edges.iter(), self.edges.iter().rev().skip(1));
        corners
            .into_iter()
            .all(|(one, other)| is_image(one.at, other.at, NANOMETRE))
            && edges.zip(images).all(|(edge, image)| {
                let (edge, image) = (edge.between(), image.between());
                edge.len() == image.len()
                    && edge
                        .iter()
                        .zip(image.iter().rev())
                        .all(|(one, other)| is_image(*one, *other, curve_within))
            })
    }

    /// The shape turned over sideways, its left and right changed.
    #[must_use]
    pub fn mirrored(&self) -> Self {
        let (least, most) = self.bounds();
        let turned = |point: Point| Point {
            across: least.across + most.across - point.across,
            ..point
        };
        let corners = self.corners.iter().rev().map(|corner| Corner {
            at: turned(corner.at),
            ..corner.clone()
        });
        // Walked the other way round, so that the first corner is the left end of the top edge
        // again; the top edge, the last of all, stays last.
        let edges = self.edges.iter().rev().skip(1).chain(self.edges.last());
        Self {
            corners: corners.collect(),
            edges: edges.map(|edge| edge.mirrored(turned)).collect(),
        }
    }

    /// The closed line as a polygon: every corner in order, and every curve as points so near to one
    /// another that the line between them stays with it.
    #[must_use]
    pub fn polygon(&self) -> Vec<Point> {
        self.corners
            .iter()
            .zip(&self.edges)
            .flat_map(|(corner, edge)| {
                std::iter::once(corner.at).chain(edge.between().iter().copied())
            })
            .collect()
    }

    /// The polygon side by side: the edge each side belongs to, its start and its end.
    pub fn sides(&self) -> impl Iterator<Item = (&Edge, Point, Point)> {
        self.runs().flat_map(|(edge, from, to)| {
            let between = edge.between();
            let starts = std::iter::once(from).chain(between.iter().copied());
            let ends = between.iter().copied().chain([to]);
            starts.zip(ends).map(move |(from, to)| (edge, from, to))
        })
    }
}

impl Edge {
    /// The edge as its mirror image is walked, the other way round.
    fn mirrored(&self, turned: impl Fn(Point) -> Point) -> Self {
        let curve = self.curve.as_ref().map(|curve| Curve {
            between: curve.between.iter().rev().copied().map(turned).collect(),
            leaves: curve.arrives.turned_round().mirrored(),
            arrives: curve.leaves.turned_round().mirrored(),
            ..*curve
        });
        Self { curve, ..*self }
    }

    /// The points of its curve between its corners; none where it is straight.
    #[must_use]
    pub fn between(&self) -> &[Point] {
        self.curve.as_ref().map_or(&[], |curve| &curve.between)
    }
}
