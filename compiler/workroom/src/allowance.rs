//! The cut line: the sewn line with every edge moved out by its own allowance.

use std::collections::BTreeSet;

use pelmet_measure::Length;

use crate::crossing::crossings;
use crate::geometry::{Span, doubled_area, with_previous};
use crate::{Corner, CornerRelief, Edge, EdgeKind, LayerMaking, OutlineMatter, Point, Shape};

/// A pointed corner of the cut line reaches this many times the larger allowance out from the sewn
/// corner and is cut off square there. Common practice, no source: more is trimmed away anyway.
pub const LONGEST_POINT: f64 = 3.0;

/// What one layer gets beyond each edge of its shape: the allowance of the edge, with extra length
/// at the top and extra width half at each side.
pub(crate) fn edge_allowances(shape: &Shape, making: &LayerMaking) -> Vec<Length> {
    let edges = making.edges;
    let left = making.wider.divided(2);
    let by = |(edge, from, to): (&Edge, Point, Point)| match edge.kind {
        EdgeKind::Top => edges.top.total() + making.longer,
        EdgeKind::Side if to.down > from.down => edges.sides.total() + left,
        EdgeKind::Side => edges.sides.total() + making.wider - left,
        EdgeKind::Lower => edges.lower.total(),
    };
    shape.runs().map(by).collect()
}

/// Moves every edge out by its allowance (in, where that is negative). Corners are carried to a
/// point, up to a limit. The reports name the places with no room for their allowance.
///
/// Edges that run straight across or down come out exact; other corners are reckoned in floating
/// point and rounded once, to the nanometre.
pub(crate) fn grow(shape: &Shape, by: &[Length]) -> Result<Shape, Vec<OutlineMatter>> {
    let points = shape.points();
    let outward = if doubled_area(&points) > 0 { -1.0 } else { 1.0 };
    let moved: Vec<MovedEdge> = shape
        .runs()
        .zip(by)
        .map(|((_, from, to), by)| MovedEdge::new(Span::between(from, to), *by, outward))
        .collect();
    let corners: Vec<Vec<Point>> = with_previous(&moved)
        .zip(&points)
        .map(|((before, after), point)| corner(*point, before, after, outward))
        .collect();
    let too_narrow = vanished(shape, &corners);
    if !too_narrow.is_empty() {
        return Err(too_narrow);
    }
    let cut = cut_corners(shape, &corners);
    let run_together = run_together(shape, by, &cut);
    if run_together.is_empty() {
        Ok(cut_shape(&cut))
    } else {
        Err(run_together)
    }
}

/// An edge on its way out: unit direction, unit normal and how far it moves, in millimetres.
#[derive(Copy, Clone)]
struct MovedEdge {
    along: (f64, f64),
    out: (f64, f64),
    by: f64,
}

impl MovedEdge {
    fn new(span: Span, by: Length, outward: f64) -> Self {
        let (across, down) = (span.across as f64, span.down as f64);
        let length = across.hypot(down);
        let along = (across / length, down / length);
        Self {
            along,
            out: (-along.1 * outward, along.0 * outward),
            by: by.as_millimetres_f64(),
        }
    }

    /// Where a point of the edge is moved to, from where it was.
    fn square_out(&self) -> (f64, f64) {
        (self.out.0 * self.by, self.out.1 * self.by)
    }
}

/// The corner or corners of the cut line at one sewn corner.
fn corner(point: Point, before: MovedEdge, after: MovedEdge, outward: f64) -> Vec<Point> {
    let mitre = mitre(before, after);
    let reach = mitre.0.hypot(mitre.1);
    let limit = LONGEST_POINT * before.by.abs().max(after.by.abs());
    let convex = cross(before.along, after.along) * outward < 0.0;
    let grows_a_point = convex == (before.by + after.by >= 0.0);
    let comes_back = dot(before.along, after.along) < 0.0;
    let offsets = if reach <= limit || (comes_back && !grows_a_point) {
        vec![mitre]
    } else if comes_back {
        cut_square(mitre, reach, limit, before, after)
    } else {
        // Nearly in line, with unlike allowances: a step from one to the other.
        vec![before.square_out(), after.square_out()]
    };
    offsets
        .into_iter()
        .filter_map(|offset| moved(point, offset))
        .collect()
}

/// Where the moved edges meet, from the sewn corner.
fn mitre(before: MovedEdge, after: MovedEdge) -> (f64, f64) {
    let turn = cross(before.out, after.out);
    (
        (before.by * after.out.1 - after.by * before.out.1) / turn,
        (after.by * before.out.0 - before.by * after.out.0) / turn,
    )
}

/// A long point cut off square to its own direction at the limit.
fn cut_square(
    mitre: (f64, f64),
    reach: f64,
    limit: f64,
    before: MovedEdge,
    after: MovedEdge,
) -> Vec<(f64, f64)> {
    let tip = (mitre.0 / reach, mitre.1 / reach);
    let back = |along: (f64, f64)| {
        let by = (reach - limit) / dot(along, tip);
        (mitre.0 - along.0 * by, mitre.1 - along.1 * by)
    };
    vec![back(before.along), back(after.along)]
}

fn moved(point: Point, offset: (f64, f64)) -> Option<Point> {
    Some(Point {
        across: point.across + Length::from_millimetres_f64(offset.0)?,
        down: point.down + Length::from_millimetres_f64(offset.1)?,
    })
}

fn cross(one: (f64, f64), other: (f64, f64)) -> f64 {
    one.0 * other.1 - one.1 * other.0
}

fn dot(one: (f64, f64), other: (f64, f64)) -> f64 {
    one.0 * other.0 + one.1 * other.1
}

/// The edges that the allowances at their ends have eaten up.
fn vanished(shape: &Shape, corners: &[Vec<Point>]) -> Vec<OutlineMatter> {
    let ends = corners.iter().cycle().skip(1);
    let mut reported = BTreeSet::new();
    let mut found = Vec::new();
    for ((edge, from, to), (start, end)) in shape.runs().zip(corners.iter().zip(ends)) {
        let way = Span::between(from, to);
        let left = start
            .last()
            .zip(end.first())
            .map(|(from, to)| Span::between(*from, *to));
        if left.is_some_and(|left| left.dot(way) > 0) || !reported.insert(edge.step) {
            continue;
        }
        let missing = left.map_or(edge.length, Span::length);
        found.push(too_narrow(edge.step, edge.length, edge.length + missing));
    }
    found
}

/// A corner of the cut line, with the sewn corner it comes from and the edge after that.
struct CutCorner<'a> {
    index: usize,
    sewn: &'a Corner,
    edge: &'a Edge,
    at: Point,
}

fn cut_corners<'a>(shape: &'a Shape, corners: &[Vec<Point>]) -> Vec<CutCorner<'a>> {
    let sewn = shape
        .corners
        .iter()
        .zip(&shape.edges)
        .zip(corners)
        .enumerate();
    let cut = sewn.flat_map(|(index, ((sewn, edge), points))| {
        points.iter().map(move |&at| CutCorner {
            index,
            sewn,
            edge,
            at,
        })
    });
    cut.collect()
}

/// The places where parts of the cut line run into one another.
fn run_together(shape: &Shape, by: &[Length], cut: &[CutCorner<'_>]) -> Vec<OutlineMatter> {
    let points: Vec<Point> = cut.iter().map(|corner| corner.at).collect();
    let mut reported = BTreeSet::new();
    let mut found = Vec::new();
    for (one, other) in crossings(&points) {
        let Some((one, other)) = cut.get(one).zip(cut.get(other)) else {
            continue;
        };
        if reported.insert(one.edge.step) {
            let meeting = [one.index, other.index].into_iter();
            let needed = meeting.filter_map(|edge| by.get(edge)).copied().sum();
            found.push(too_narrow(
                one.edge.step,
                gap(shape, one.index, other.index),
                needed,
            ));
        }
    }
    found
}

fn cut_shape(cut: &[CutCorner<'_>]) -> Shape {
    let ends = cut.iter().cycle().skip(1);
    let lengths = cut
        .iter()
        .zip(ends)
        .map(|(from, to)| Span::between(from.at, to.at).length());
    let sewn_off = |corner: &CutCorner<'_>| Corner {
        at: corner.at,
        relief: CornerRelief::Nothing,
        step: corner.sewn.step,
    };
    Shape {
        corners: cut.iter().map(sewn_off).collect(),
        edges: cut
            .iter()
            .zip(lengths)
            .map(|(corner, length)| Edge {
                length,
                ..*corner.edge
            })
            .collect(),
    }
}

fn too_narrow(step: Option<usize>, width: Length, needed: Length) -> OutlineMatter {
    OutlineMatter::TooNarrow {
        step: step.unwrap_or(0),
        width,
        needed,
    }
}

/// How near two edges of the sewn line come to one another.
fn gap(shape: &Shape, first: usize, second: usize) -> Length {
    let run = |index| shape.runs().nth(index).map(|(_, from, to)| (from, to));
    let Some((one, other)) = run(first).zip(run(second)) else {
        return Length::ZERO;
    };
    let ends = [
        (one.0, other),
        (one.1, other),
        (other.0, one),
        (other.1, one),
    ];
    let distances = ends.into_iter().map(|(point, line)| distance(point, line));
    Length::from_millimetres_f64(distances.fold(f64::INFINITY, f64::min)).unwrap_or(Length::ZERO)
}

/// How far a point lies from the nearest point of an edge, in millimetres.
fn distance(point: Point, (from, to): (Point, Point)) -> f64 {
    let between = |from: Point, to: Point| {
        let (across, down) = (to.across - from.across, to.down - from.down);
        (across.as_millimetres_f64(), down.as_millimetres_f64())
    };
    let (line, here) = (between(from, to), between(from, point));
    let part = (dot(here, line) / dot(line, line)).clamp(0.0, 1.0);
    (here.0 - line.0 * part).hypot(here.1 - line.1 * part)
}
