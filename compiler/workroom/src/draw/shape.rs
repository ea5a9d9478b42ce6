//! From an outline's points to the made-up shape of the whole panel.

use std::collections::BTreeSet;

use pelmet_measure::Length;
use pelmet_model::geometry::Vector;
use pelmet_model::{Corner, Curve, Edge, EdgeKind, Matter, OutlineMatter, Point, Relief, Shape};

use crate::draw::clips::clips;
use crate::draw::crossing::crossings;
use crate::draw::curve::Bend;
use crate::draw::outline::DrawnPoint;

/// A turn is called a corner where it leaves the straight by more than one part in this many,
/// about five degrees. Common practice, no source: less opens and turns without help.
pub const LEAST_TURN: i128 = 12;

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
    let drawn = without_straight_points(drawn);
    // The left side is drawn by the last step of a half outline, by the first of a whole one.
    let left_side = if ground.half {
        drawn.last()
    } else {
        drawn.first()
    };
    let mut vertices = vec![Vertex {
        edge: left_side.map(|point| point.step),
        ..Vertex::at(Length::ZERO, Length::ZERO)
    }];
    vertices.extend(below_heading(&drawn, ground));
    vertices.push(Vertex {
        corner: drawn.last().map(|point| point.step),
        ..Vertex::at(ground.flat, Length::ZERO)
    });
    let shape = finish(without_straight_points(join_doubles(vertices)), ground.flat);
    let crossed = crossed_steps(&shape);
    matters.extend(
        crossed
            .iter()
            .map(|&(first, second)| Matter::from(OutlineMatter::CrossesItself { first, second })),
    );
    crossed.is_empty().then_some(shape)
}

/// A corner on the way round, with the steps that drew it and the edge after it.
#[derive(Clone)]
struct Vertex {
    at: Point,
    corner: Option<usize>,
    edge: Option<usize>,
    /// How the edge after it curves.
    bend: Option<Bend>,
    /// Whether the drawn line is joined here to its mirror image or to the heading.
    joint: bool,
    name: Option<String>,
}

impl Vertex {
    fn at(across: Length, down: Length) -> Self {
        Self {
            at: Point { across, down },
            corner: None,
            edge: None,
            bend: None,
            joint: false,
            name: None,
        }
    }
}

/// A point of a line: where it is, whether the line to it or on from it is straight, and whether it
/// may be left out if both are.
trait OnLine {
    fn place(&self) -> Point;
    fn comes_straight(&self, before: &Self) -> bool;
    fn may_go(&self) -> bool;
}

impl OnLine for DrawnPoint {
    fn place(&self) -> Point {
        self.at()
    }

    fn comes_straight(&self, _: &Self) -> bool {
        self.bend.is_none()
    }

    fn may_go(&self) -> bool {
        self.name.is_none()
    }
}

impl OnLine for Vertex {
    fn place(&self) -> Point {
        self.at
    }

    fn comes_straight(&self, before: &Self) -> bool {
        before.bend.is_none()
    }

    fn may_go(&self) -> bool {
        self.joint && self.name.is_none()
    }
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
    let mut right = right.into_iter();
    if on_fold && let (Some(fold), Some(image)) = (whole.pop(), right.next()) {
        join_at_fold(&mut whole, fold, image);
    }
    whole.extend(right);
    whole
}

/// Makes one corner of a point on the fold and its image, or none where a curve goes smoothly on.
fn join_at_fold(whole: &mut Vec<Vertex>, fold: Vertex, image: Vertex) {
    let before = whole.last_mut().and_then(|vertex| vertex.bend.as_mut());
    match (before, image.bend) {
        (Some(before), Some(after))
            if fold.name.is_none() && !is_turn(before.arrives, after.leaves) =>
        {
            *before = before.clone().joined(fold.at, after);
        }
        (_, bend) => whole.push(Vertex {
            edge: image.edge,
            bend,
            ..fold
        }),
    }
}

/// The drawn points in their place, each with the edge to the next.
fn as_drawn(drawn: &[DrawnPoint], ground: Ground) -> Vec<Vertex> {
    let left_of = ground.flat - ground.drawn_width();
    let place = |point: Point| Point {
        across: left_of + point.across,
        down: ground.heading_depth + point.down,
    };
    let nexts = drawn.iter().skip(1).map(Some).chain([None]);
    let vertices = drawn
        .iter()
        .enumerate()
        .zip(nexts)
        .map(|((index, point), next)| Vertex {
            at: place(point.at()),
            corner: Some(point.step),
            edge: Some(next.unwrap_or(point).step),
            bend: next
                .and_then(|next| next.bend.clone())
                .map(|bend| bend.moved(place)),
            joint: index == 0 || next.is_none(),
            name: point.name.clone(),
        });
    vertices.collect()
}

/// The mirror image of the drawn points, each with the edge that leads to it as drawn.
fn mirrored(drawn: &[DrawnPoint], ground: Ground) -> Vec<Vertex> {
    let fold = ground.drawn_width();
    let place = |point: Point| Point {
        across: fold - point.across,
        down: ground.heading_depth + point.down,
    };
    let vertices = drawn.iter().enumerate().map(|(index, point)| Vertex {
        at: place(point.at()),
        corner: Some(point.step),
        edge: Some(point.step),
        bend: point
            .bend
            .clone()
            .map(|bend| bend.mirrored(place).reversed()),
        joint: index == 0 || index.saturating_add(1) == drawn.len(),
        name: point.name.clone(),
    });
    vertices.rev().collect()
}

/// Takes corners that lie on one another as one; the edge is that of the last of them.
fn join_doubles(vertices: Vec<Vertex>) -> Vec<Vertex> {
    let mut joined: Vec<Vertex> = Vec::with_capacity(vertices.len());
    for vertex in vertices {
        match joined.last_mut() {
            Some(last) if last.at == vertex.at && last.bend.is_none() => {
                last.edge = vertex.edge;
                last.bend = vertex.bend;
                last.name = last.name.take().or(vertex.name);
            }
            _ => joined.push(vertex),
        }
    }
    joined
}

/// Leaves out those points that may be left out, where the line goes straight on.
fn without_straight_points<T: OnLine>(points: Vec<T>) -> Vec<T> {
    let mut kept: Vec<T> = Vec::with_capacity(points.len());
    for point in points {
        if let [.., before, last] = kept.as_slice() {
            let way_in = Vector::between(before.place(), last.place());
            let way_on = Vector::between(last.place(), point.place());
            let straight = last.comes_straight(before) && point.comes_straight(last);
            let goes_on = way_in.cross(way_on) == 0 && way_in.dot(way_on).is_positive();
            if straight && goes_on && last.may_go() {
                kept.pop();
            }
        }
        kept.push(point);
    }
    kept
}

/// The pairs of steps whose edges cross. A crossing of both halves of a panel is one mistake.
fn crossed_steps(shape: &Shape) -> BTreeSet<(usize, usize)> {
    let steps: Vec<Option<usize>> = shape.sides().map(|(edge, ..)| edge.step).collect();
    let step = |side: usize| steps.get(side).copied().flatten();
    let crossed = crossings(&shape.polygon())
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
fn finish(vertices: Vec<Vertex>, flat: Length) -> Shape {
    let ends = vertices.iter().cycle().skip(1);
    let edges: Vec<Edge> = vertices
        .iter()
        .zip(ends)
        .enumerate()
        .map(|(index, (from, to))| {
            let is_top = index.saturating_add(1) == vertices.len();
            edge(from, to.at, is_top, flat)
        })
        .collect();
    let ways: Vec<Way> = vertices
        .iter()
        .zip(vertices.iter().cycle().skip(1))
        .map(|(from, to)| Way::along(from, to.at))
        .collect();
    let ways_in = ways.last().into_iter().chain(&ways);
    let reliefs: Vec<Option<Relief>> = ways_in
        .zip(&ways)
        .map(|(way_in, way_on)| relief(way_in, way_on))
        .collect();
    let corners = vertices
        .into_iter()
        .zip(reliefs)
        .map(|(vertex, relief)| Corner {
            at: vertex.at,
            relief,
            step: vertex.corner,
            name: vertex.name,
        });
    Shape {
        corners: corners.collect(),
        edges,
    }
}

fn edge(from: &Vertex, to: Point, is_top: bool, flat: Length) -> Edge {
    let span = Vector::between(from.at, to);
    let curve = from.bend.as_ref().map(|bend| {
        let mut points = vec![from.at];
        points.extend(&bend.between);
        points.push(to);
        let (clips, wedges) = clips(&points);
        Curve {
            between: bend.between.clone(),
            clips,
            wedges,
            leaves: bend.leaves,
            arrives: bend.arrives,
            circle: bend.circle,
        }
    });
    let kind = match &curve {
        _ if is_top => EdgeKind::Top,
        Some(_) => EdgeKind::Lower,
        None => kind(from.at, span, flat),
    };
    Edge {
        kind,
        length: from.bend.as_ref().map_or(span.length(), |bend| bend.length),
        step: from.edge,
        curve,
    }
}

fn kind(from: Point, span: Vector, flat: Length) -> EdgeKind {
    let at_full_width = from.across.is_zero() || from.across == flat;
    if span.across == 0 && at_full_width {
        EdgeKind::Side
    } else {
        EdgeKind::Lower
    }
}

/// The directions in which an edge leaves its first corner and comes to its second, and the sides
/// of its line that lie there.
struct Way {
    leaves: Vector,
    arrives: Vector,
    first_side: Vector,
    last_side: Vector,
}

impl Way {
    fn along(from: &Vertex, to: Point) -> Self {
        let between = from.bend.iter().flat_map(|bend| &bend.between);
        let (first, last) = (between.clone().next(), between.last());
        let first_side = Vector::between(from.at, *first.unwrap_or(&to));
        let last_side = Vector::between(*last.unwrap_or(&from.at), to);
        let ends = from.bend.as_ref().map(|bend| (bend.leaves, bend.arrives));
        let (leaves, arrives) = ends.unwrap_or((first_side, last_side));
        Self {
            leaves,
            arrives,
            first_side,
            last_side,
        }
    }
}

/// What the allowance calls for at a turn; nothing where there is none worth the name. The panel lies on the left of its line.
fn relief(way_in: &Way, way_on: &Way) -> Option<Relief> {
    if !is_turn(way_in.arrives, way_on.leaves) {
        return None;
    }
    // Where curves meet in a cusp neither turns to a side; what lies beside it does.
    let turn = match way_in.arrives.cross(way_on.leaves) {
        0 => way_in.last_side.cross(way_on.first_side),
        turn => turn,
    };
    Some(if turn.is_negative() {
        Relief::Trim
    } else {
        Relief::Snip
    })
}

/// Whether the line turns there by as much as is called a corner.
fn is_turn(way_in: Vector, way_on: Vector) -> bool {
    let turn = way_in.cross(way_on).saturating_abs();
    turn.saturating_mul(LEAST_TURN) >= way_in.dot(way_on)
}
