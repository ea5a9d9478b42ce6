//! The cut line: the sewn line with every edge moved out by its own allowance.

use std::collections::BTreeSet;

use kurbo::Vec2;
use pelmet_measure::Length;
use pelmet_model::geometry::{Vector, with_previous};
use pelmet_model::{Corner, Curve, Edge, EdgeKind, LayerMaking, OutlineMatter, Point, Shape};

use crate::cut::allowance_edge::{MovedEdge, Trimmed, trim};
use crate::draw::crossing::crossings;
use crate::draw::curve::{NEAREST, moved, way};

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
        EdgeKind::Lower | EdgeKind::Band => edges.of(edge.kind).total(),
    };
    shape.runs().map(by).collect()
}

/// Moves every edge out by its allowance (in, where that is negative). Corners are carried to a
/// point, up to a limit. The reports name the places with no room for their allowance.
///
/// Edges that run straight across or down come out exact; other corners are reckoned in floating
/// point and rounded once, to the nanometre. A curve stays within 0.1 mm of its allowance as long
/// as that is less than four times its radius.
pub(crate) fn grow(shape: &Shape, by: &[Length]) -> Result<Shape, Vec<OutlineMatter>> {
    let moved: Vec<MovedEdge> = shape
        .runs()
        .zip(by)
        .map(|((edge, from, to), by)| MovedEdge::new(edge, (from, to), *by))
        .collect();
    let corners: Vec<CutCorner> = with_previous(&moved.iter().collect::<Vec<_>>())
        .zip(shape.corners.iter())
        .map(|((before, after), sewn)| corner(sewn.at, before, after))
        .collect();
    let ends = corners.iter().cycle().skip(1);
    let trimmed: Vec<Trimmed> = moved
        .iter()
        .zip(corners.iter().zip(ends))
        .map(|(edge, (start, end))| trim(edge, start, end))
        .collect();
    let too_narrow = vanished(shape, by, &trimmed);
    if !too_narrow.is_empty() {
        return Err(too_narrow);
    }
    let cut = CutLine::new(shape, by, &corners, trimmed);
    let run_together = run_together(shape, by, &cut);
    if run_together.is_empty() {
        Ok(cut.shape)
    } else {
        Err(run_together)
    }
}

/// The corner or corners of the cut line at one sewn corner.
#[derive(Clone, Debug, Default)]
pub(crate) struct CutCorner {
    pub(crate) at: Vec<Point>,
    /// Where two moved edges cross: the side of the edge before, and of the edge after, on which
    /// they do. What lies beyond is cut off.
    pub(crate) crossing: Option<(usize, usize)>,
}

fn corner(point: Point, before: &MovedEdge, after: &MovedEdge) -> CutCorner {
    // A corner grows a point where its edges move apart from one another: a convex one moved out, a hollow
    // one moved in. Otherwise they run into one another, and where one of them curves the place is not
    // that of two straight lines but has to be looked for along both.
    let convex = turn(before, after) < 0.0;
    let grows_a_point = convex == (before.by + after.by >= 0.0);
    let curved = before.is_curved() || after.is_curved();
    if curved
        && !grows_a_point
        && let Some((crossing, there)) = before.crossing(after)
    {
        return CutCorner {
            at: moved(point, there - way_from_origin(point))
                .into_iter()
                .collect(),
            crossing: Some(crossing),
        };
    }
    let offsets = offsets(before, after, grows_a_point);
    CutCorner {
        at: offsets
            .into_iter()
            .filter_map(|offset| moved(point, offset))
            .collect(),
        crossing: None,
    }
}

/// By how much the line turns from one edge to the next, negative round the panel. Where curves
/// meet in a cusp neither turns to a side; what lies beside it does.
fn turn(before: &MovedEdge, after: &MovedEdge) -> f64 {
    let turn = before.arrives.cross(after.leaves);
    if turn.abs() > 0.0 {
        turn
    } else {
        before.last_side().cross(after.first_side())
    }
}

/// From the sewn corner to the corner or corners of the cut line, for edges that are straight there.
fn offsets(before: &MovedEdge, after: &MovedEdge, grows_a_point: bool) -> Vec<Vec2> {
    let mitre = mitre(before, after);
    let reach = mitre.hypot();
    let limit = LONGEST_POINT * before.by.abs().max(after.by.abs());
    let comes_back = before.arrives.dot(after.leaves) < 0.0;
    if reach <= limit || (comes_back && !grows_a_point) {
        vec![mitre]
    } else if comes_back {
        // In a cusp the moved edges run side by side and never meet.
        let tip = mitre / reach;
        let tip = if tip.is_finite() { tip } else { before.arrives };
        cut_square(tip, limit, before, after)
    } else {
        // In line, or nearly so: a step from one to the other where they have unlike allowances.
        one_or_both(before.square_out_at_end(), after.square_out_at_start())
    }
}

fn one_or_both(one: Vec2, other: Vec2) -> Vec<Vec2> {
    if (one - other).hypot() < NEAREST {
        vec![one]
    } else {
        vec![one, other]
    }
}

/// Where the moved edges meet, from the sewn corner.
fn mitre(before: &MovedEdge, after: &MovedEdge) -> Vec2 {
    let (one, other) = (before.out_at_end(), after.out_at_start());
    let turn = one.cross(other);
    // The point p with p.one = before.by and p.other = after.by, `one` and `other` the unit normals: two
    // equations solved by Cramer's rule. Edges in line have no such point; the quotient is then not
    // finite, longer than any limit, and is taken care of by the caller.
    Vec2::new(
        (before.by * other.y - after.by * one.y) / turn,
        (after.by * one.x - before.by * other.x) / turn,
    )
}

/// A long point cut off at the limit, square to the direction of its tip.
fn cut_square(tip: Vec2, limit: f64, before: &MovedEdge, after: &MovedEdge) -> Vec<Vec2> {
    let cut = |start: Vec2, along: Vec2| {
        let on = (limit - start.dot(tip)) / along.dot(tip);
        start + along * on
    };
    one_or_both(
        cut(before.square_out_at_end(), before.arrives),
        cut(after.square_out_at_start(), after.leaves),
    )
}

fn way_from_origin(point: Point) -> Vec2 {
    way(
        Point {
            across: Length::ZERO,
            down: Length::ZERO,
        },
        point,
    )
}

/// The edges that the allowances at their ends, or their own where they curve, have eaten up.
fn vanished(shape: &Shape, by: &[Length], trimmed: &[Trimmed]) -> Vec<OutlineMatter> {
    let mut reported = BTreeSet::new();
    let mut found = Vec::new();
    for ((edge, by), trimmed) in shape.edges.iter().zip(by).zip(trimmed) {
        let matter = match *trimmed {
            Trimmed::Left { .. } => continue,
            Trimmed::Gone { missing } => too_narrow(
                edge.step,
                edge.length,
                edge.length + missing.unwrap_or(edge.length),
            ),
            Trimmed::TooTight { radius } => OutlineMatter::CurveTooTight {
                step: edge.step.unwrap_or(0),
                radius,
                needed: by.abs(),
            },
        };
        if reported.insert(edge.step) {
            found.push(matter);
        }
    }
    found
}

/// The cut line, with the edge of the sewn line that each of its edges comes from.
struct CutLine {
    shape: Shape,
    sewn: Vec<usize>,
}

impl CutLine {
    fn new(shape: &Shape, by: &[Length], corners: &[CutCorner], trimmed: Vec<Trimmed>) -> Self {
        let mut cut = Self {
            shape: Shape {
                corners: vec![],
                edges: vec![],
            },
            sewn: vec![],
        };
        let moved = shape.edges.iter().zip(by.iter().copied());
        let sewn = shape.corners.iter().zip(moved);
        let parts = sewn.zip(corners).zip(trimmed).enumerate();
        for (index, (((sewn, edge), corner), trimmed)) in parts {
            let Some((last, first)) = corner.at.split_last() else {
                continue;
            };
            for at in first {
                cut.push(index, (sewn, *at), edge, vec![]);
            }
            let between = match trimmed {
                Trimmed::Left { between } => between,
                Trimmed::Gone { .. } | Trimmed::TooTight { .. } => vec![],
            };
            cut.push(index, (sewn, *last), edge, between);
        }
        cut.measure();
        cut
    }

    /// Adds a corner with the edge after it.
    fn push(
        &mut self,
        index: usize,
        (sewn, at): (&Corner, Point),
        (edge, by): (&Edge, Length),
        between: Vec<Point>,
    ) {
        self.sewn.push(index);
        self.shape.corners.push(Corner {
            at,
            relief: None,
            step: sewn.step,
            name: None,
        });
        let curve = edge.curve.as_ref().filter(|_| !between.is_empty());
        self.shape.edges.push(Edge {
            kind: edge.kind,
            length: Length::ZERO,
            step: edge.step,
            curve: curve.map(|curve| Curve {
                between,
                clips: 0,
                wedges: 0,
                circle: curve.circle.map(|circle| circle.grown(by)),
                leaves: curve.leaves,
                arrives: curve.arrives,
            }),
        });
    }

    /// Says how long every edge is.
    fn measure(&mut self) {
        let lengths: Vec<Length> = self
            .shape
            .runs()
            .map(|(edge, from, to)| {
                let between = edge.between().iter().copied();
                let starts = std::iter::once(from).chain(between.clone());
                starts
                    .zip(between.chain([to]))
                    .map(|(from, to)| Vector::between(from, to).length())
                    .sum()
            })
            .collect();
        for (edge, length) in self.shape.edges.iter_mut().zip(lengths) {
            edge.length = length;
        }
    }

    /// The edge of the sewn line for each side of the polygon.
    fn sides(&self) -> Vec<usize> {
        let edges = self.sewn.iter().zip(&self.shape.edges);
        let sides = edges.flat_map(|(sewn, edge)| {
            std::iter::repeat_n(*sewn, edge.between().len().saturating_add(1))
        });
        sides.collect()
    }
}

/// The places where parts of the cut line run into one another.
fn run_together(shape: &Shape, by: &[Length], cut: &CutLine) -> Vec<OutlineMatter> {
    let sides = cut.sides();
    let mut reported = BTreeSet::new();
    let mut found = Vec::new();
    for (one, other) in crossings(&cut.shape.polygon()) {
        let Some((&one, &other)) = sides.get(one).zip(sides.get(other)) else {
            continue;
        };
        let step = shape.edges.get(one).and_then(|edge| edge.step);
        if reported.insert(step) {
            let meeting = [one, other].into_iter();
            let needed = meeting.filter_map(|edge| by.get(edge)).copied().sum();
            found.push(too_narrow(step, gap(shape, one, other), needed));
        }
    }
    found
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
    let sides = |index: usize| -> Vec<(Point, Point)> {
        let edge = shape.edges.get(index);
        let sides = shape.sides();
        sides
            .filter(|(other, ..)| edge.is_some_and(|edge| std::ptr::eq(edge, *other)))
            .map(|(_, from, to)| (from, to))
            .collect()
    };
    let (one, other) = (sides(first), sides(second));
    let nearest = |points: &[(Point, Point)], lines: &[(Point, Point)]| {
        let ends = points.iter().flat_map(|(from, to)| [*from, *to]);
        ends.flat_map(|point| lines.iter().map(move |line| distance(point, *line)))
            .fold(f64::INFINITY, f64::min)
    };
    let least = nearest(&one, &other).min(nearest(&other, &one));
    Length::from_millimetres_f64(least).unwrap_or(Length::ZERO)
}

/// How far a point lies from the nearest point of an edge, in millimetres.
fn distance(point: Point, (from, to): (Point, Point)) -> f64 {
    let (line, here) = (way(from, to), way(from, point));
    let part = (here.dot(line) / line.dot(line)).clamp(0.0, 1.0);
    (here - line * part).hypot()
}
