//! The two halves of a made-up shape: whether they are alike, and the shape turned over.

use pelmet_measure::Length;
use pelmet_model::{Circle, Corner, Curve, Edge, Point, Shape};

use crate::draw::curve::FLATTENING;

const NANOMETRE: Length = Length::from_nanometres(1);

/// Whether the right half is the mirror image of the left: straight edges to the nanometre an
/// odd width leaves over, curves as nearly as their points stand for them.
pub fn has_like_halves(shape: &Shape) -> bool {
    let (least, most) = shape.bounds();
    let is_image = |one: Point, other: Point, within: Length| {
        let sum = one.across + other.across - least.across - most.across;
        (one.down - other.down).abs() <= within - NANOMETRE && sum.abs() <= within
    };
    let curve_within = Length::from_millimetres_f64(FLATTENING * 2.0).unwrap_or(NANOMETRE);
    let corners = shape.corners.iter().zip(shape.corners.iter().rev());
    // The top edge is the last one and its own image.
    let (edges, images) = (shape.edges.iter(), shape.edges.iter().rev().skip(1));
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
pub fn mirrored(shape: &Shape) -> Shape {
    let (least, most) = shape.bounds();
    let turned = |point: Point| Point {
        across: least.across + most.across - point.across,
        ..point
    };
    let corners = shape.corners.iter().rev().map(|corner| Corner {
        at: turned(corner.at),
        ..corner.clone()
    });
    // Walked the other way round, so that the first corner is the left end of the top edge
    // again; the top edge, the last of all, stays last.
    let edges = shape.edges.iter().rev().skip(1).chain(shape.edges.last());
    Shape {
        corners: corners.collect(),
        edges: edges.map(|edge| mirrored_edge(edge, turned)).collect(),
    }
}

/// The edge as its mirror image is walked, the other way round.
fn mirrored_edge(edge: &Edge, turned: impl Fn(Point) -> Point) -> Edge {
    let curve = edge.curve.as_ref().map(|curve| Curve {
        between: curve.between.iter().rev().copied().map(&turned).collect(),
        leaves: curve.arrives.turned_round().mirrored(),
        arrives: curve.leaves.turned_round().mirrored(),
        circle: curve.circle.map(|circle| Circle {
            centre: turned(circle.centre),
            ..circle
        }),
        ..*curve
    });
    Edge { curve, ..*edge }
}
