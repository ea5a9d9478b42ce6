//! From an outline's points to the made-up shape of the whole panel.

use std::collections::BTreeSet;

use pelmet_measure::{Area, Length};

use crate::crossing::crossings;
use crate::geometry::{Span, closed, doubled_area};
use crate::outline_drawn::DrawnPoint;
use crate::{Corner, CornerRelief, Edge, EdgeKind, Matter, OutlineMatter, Point, Shape};

/// A turn is called a corner where it leaves the straight by more than one part in this many,
/// about five degrees. Common practice, no source: less opens and turns without help.
pub const LEAST_TURN: i128 = 12;

impl Shape {
    /// The area inside.
    pub fn area(&self) -> Area {
        Area::from_square_nanometres(doubled_area(&self.points()).saturating_abs() >> 1)
    }

    /// The top left and the lower right corner of the rectangle it just fits into.
    pub fn bounds(&self) -> (Point, Point) {
        let points = self.points();
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

    /// Whether the right half is the mirror image of the left, to the nanometre an odd width
    /// leaves over.
    pub fn has_like_halves(&self) -> bool {
        let (least, most) = self.bounds();
        let mirrored = self.corners.iter().rev();
        self.corners.iter().zip(mirrored).all(|(one, other)| {
            let sum = one.at.across + other.at.across - least.across - most.across;
            one.at.down == other.at.down && sum.abs() <= Length::from_nanometres(1)
        })
    }

    /// The shape turned over sideways, its left and right changed.
    #[must_use]
    pub fn mirrored(&self) -> Self {
        let (least, most) = self.bounds();
        let turned = |corner: &Corner| Corner {
            at: Point {
                across: least.across + most.across - corner.at.across,
                ..corner.at
            },
            ..*corner
        };
        // Walked the other way round, so that the first corner is the left end of the top edge
        // again; the top edge, the last of all, stays last.
        let mut edges: Vec<Edge> = self.edges.iter().rev().skip(1).copied().collect();
        edges.extend(self.edges.last());
        Self {
            corners: self.corners.iter().rev().map(turned).collect(),
            edges,
        }
    }

    /// The closed line as a polygon: every corner in order, and every curve as points so near to one
    /// another that the line between them stays with it.
    #[must_use]
    pub fn polygon(&self) -> Vec<Point> {
        self.points()
    }

    /// The polygon side by side: the edge each side belongs to, its start and its end.
    pub fn sides(&self) -> impl Iterator<Item = (&Edge, Point, Point)> {
        self.runs()
    }

    /// Its corners as points.
    pub(crate) fn points(&self) -> Vec<Point> {
        self.corners.iter().map(|corner| corner.at).collect()
    }
}

/// What a drawn outline is part of.
#[derive(Copy, Clone, Debug)]
pub(crate) struct Ground {
    /// Flat width of the whole panel.
    pub(crate) flat: Length,
    /// Depth of the heading above the outline.
    pub(crate) heading_depth: Length,
    /// Whether the points are those of the right half, from the fold outward.
    pub(crate) half: bool,
}

impl Ground {
    /// The width that the outline is drawn in: the panel's, or half of it.
    pub(crate) fn drawn_width(self) -> Length {
        if self.half {
            self.flat.divided(2)
        } else {
            self.flat
        }
    }
}

/// The made-up shape that drawn points stand for: mirrored where they are one half, set below the
/// heading and closed along the top edge. `None` where its line crosses or touches itself.
pub(crate) fn shape_of(
    drawn: Vec<DrawnPoint>,
    ground: Ground,
    matters: &mut Vec<Matter>,
) -> Option<Shape> {
    // Done before mirroring, while both halves are still one: half an odd width puts the fold a
    // nanometre out, enough to bend a straight line. Later only the joints may turn out straight.
    let drawn = without_straight_points(drawn, |point| at(point.across, point.down), |_| true);
    // The left side is drawn by the last step of a half outline, by the first of a whole one.
    let left_side = if ground.half {
        drawn.last()
    } else {
        drawn.first()
    };
    let mut vertices = vec![Vertex {
        at: at(Length::ZERO, Length::ZERO),
        corner: None,
        edge: left_side.map(|point| point.step),
        joint: false,
    }];
    vertices.extend(below_heading(&drawn, ground));
    vertices.push(Vertex {
        at: at(ground.flat, Length::ZERO),
        corner: drawn.last().map(|point| point.step),
        edge: None,
        joint: false,
    });
    let corners = without_straight_points(
        join_doubles(vertices),
        |vertex| vertex.at,
        |vertex| vertex.joint,
    );
    let shape = finish(&corners, ground.flat);
    let crossed = crossed_steps(&shape);
    matters.extend(
        crossed
            .iter()
            .map(|&(first, second)| Matter::from(OutlineMatter::CrossesItself { first, second })),
    );
    crossed.is_empty().then_some(shape)
}

/// A corner on the way round, with the steps that drew it and the edge after it.
#[derive(Copy, Clone)]
struct Vertex {
    at: Point,
    corner: Option<usize>,
    edge: Option<usize>,
    /// Whether the drawn line is joined here to its mirror image or to the heading.
    joint: bool,
}

fn at(across: Length, down: Length) -> Point {
    Point { across, down }
}

/// The line below the heading, from left to right in flat coordinates.
fn below_heading(drawn: &[DrawnPoint], ground: Ground) -> Vec<Vertex> {
    let right = as_drawn(drawn, ground);
    if !ground.half {
        return right;
    }
    let mut whole = mirrored(drawn, ground);
    // A point on the fold is one corner of the whole panel, though half an odd width puts its two
    // images a nanometre apart.
    let on_fold = drawn.first().is_some_and(|point| point.across.is_zero());
    if on_fold && let (Some(fold), Some(image)) = (whole.last_mut(), right.first()) {
        fold.edge = image.edge;
    }
    whole.extend(right.into_iter().skip(usize::from(on_fold)));
    whole
}

/// The drawn points in their place, each with the edge to the next.
fn as_drawn(drawn: &[DrawnPoint], ground: Ground) -> Vec<Vertex> {
    let left_of = ground.flat - ground.drawn_width();
    let nexts = drawn.iter().skip(1).map(Some).chain([None]);
    let vertices = drawn
        .iter()
        .enumerate()
        .zip(nexts)
        .map(|((index, point), next)| Vertex {
            at: at(left_of + point.across, ground.heading_depth + point.down),
            corner: Some(point.step),
            edge: Some(next.unwrap_or(point).step),
            joint: index == 0 || next.is_none(),
        });
    vertices.collect()
}

/// The mirror image of the drawn points, each with the edge that leads to it as drawn.
fn mirrored(drawn: &[DrawnPoint], ground: Ground) -> Vec<Vertex> {
    let fold = ground.drawn_width();
    let mut vertices = as_drawn(drawn, ground);
    for (vertex, point) in vertices.iter_mut().zip(drawn) {
        vertex.at.across = fold - point.across;
        vertex.edge = vertex.corner;
    }
    vertices.reverse();
    vertices
}

/// Takes corners that lie on one another as one; the edge is that of the last of them.
fn join_doubles(vertices: Vec<Vertex>) -> Vec<Vertex> {
    let mut joined: Vec<Vertex> = Vec::with_capacity(vertices.len());
    for vertex in vertices {
        match joined.last_mut() {
            Some(last) if last.at == vertex.at => last.edge = vertex.edge,
            _ => joined.push(vertex),
        }
    }
    joined
}

/// Leaves out those points that may be left out, where the line goes straight on.
fn without_straight_points<T>(
    points: Vec<T>,
    at: impl Fn(&T) -> Point,
    may_go: impl Fn(&T) -> bool,
) -> Vec<T> {
    let mut kept: Vec<T> = Vec::with_capacity(points.len());
    for point in points {
        if let [.., before, last] = kept.as_slice() {
            let way_in = Span::between(at(before), at(last));
            let way_on = Span::between(at(last), at(&point));
            if may_go(last) && way_in.cross(way_on) == 0 && way_in.dot(way_on) > 0 {
                kept.pop();
            }
        }
        kept.push(point);
    }
    kept
}

/// The pairs of steps whose edges cross. A crossing of both halves of a panel is one mistake.
fn crossed_steps(shape: &Shape) -> BTreeSet<(usize, usize)> {
    let step = |edge: usize| shape.edges.get(edge).and_then(|edge| edge.step);
    let crossed = crossings(&shape.points())
        .into_iter()
        .filter_map(|(one, other)| {
            // The top edge has no step of its own: what crosses it is told by the other step alone.
            let one_step = step(one).or(step(other))?;
            let other_step = step(other).unwrap_or(one_step);
            Some((one_step.min(other_step), one_step.max(other_step)))
        });
    crossed.collect()
}

/// Says what every edge and corner is.
fn finish(vertices: &[Vertex], flat: Length) -> Shape {
    let points: Vec<Point> = vertices.iter().map(|vertex| vertex.at).collect();
    let turns_right = doubled_area(&points) > 0;
    let spans: Vec<Span> = closed(&points)
        .map(|(from, to)| Span::between(from, to))
        .collect();
    let ways_in = spans.last().into_iter().chain(&spans);
    let corners = vertices
        .iter()
        .zip(ways_in.zip(&spans))
        .map(|(vertex, (way_in, way_on))| Corner {
            at: vertex.at,
            relief: relief(*way_in, *way_on, turns_right),
            step: vertex.corner,
        });
    let last = vertices.len().saturating_sub(1);
    let edges = vertices
        .iter()
        .zip(&spans)
        .enumerate()
        .map(|(index, (vertex, span))| Edge {
            kind: if index == last {
                EdgeKind::Top
            } else {
                kind(vertex.at, *span, flat)
            },
            length: span.length(),
            step: vertex.edge,
        });
    Shape {
        corners: corners.collect(),
        edges: edges.collect(),
    }
}

fn kind(from: Point, span: Span, flat: Length) -> EdgeKind {
    let at_full_width = from.across.is_zero() || from.across == flat;
    if span.across == 0 && at_full_width {
        EdgeKind::Side
    } else {
        EdgeKind::Lower
    }
}

/// What the allowance calls for at a turn. The panel lies on the inner side of a convex turn.
fn relief(way_in: Span, way_on: Span, turns_right: bool) -> CornerRelief {
    let turn = way_in.cross(way_on);
    let straight_on = way_in.dot(way_on);
    if turn.saturating_abs().saturating_mul(LEAST_TURN) < straight_on {
        CornerRelief::Nothing
    } else if (turn > 0) == turns_right {
        CornerRelief::Trim
    } else {
        CornerRelief::Snip
    }
}
