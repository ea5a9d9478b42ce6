//! Outlines as numbers: the sewn one corner by corner, the cutting line from two straight edges.

use pelmet_measure::{Length, Ratio};
use pelmet_workroom::{EdgeKind as EdgeKindMade, Piece as PieceMade, Point, Shape};

use super::mark::relief;
use super::ordinal;
use super::printer::Printer;
use crate::packet::{EdgeKind, OutlinePoint, SewnCorner};

/// The sewn outline.
pub(crate) fn sewn(shape: &Shape, printer: &Printer<'_>) -> Vec<SewnCorner> {
    shape
        .corners
        .iter()
        .zip(&shape.edges)
        .enumerate()
        .map(|(index, (corner, edge))| SewnCorner {
            number: ordinal(index),
            at: printer.place(corner.at.across, corner.at.down),
            relief: relief(corner.relief),
            edge: edge_kind(edge.kind),
            edge_length: printer.mark(edge.length),
        })
        .collect()
}

/// The cutting line of a piece from its left edge and its top, or from its fold and its top;
/// shrinkage included.
pub(crate) fn cutting_line(piece: &PieceMade, printer: &Printer<'_>) -> Vec<OutlinePoint> {
    let points = from_top_left(piece);
    let points = if piece.on_fold {
        from_fold(&points, piece.cut_width)
    } else {
        points
    };
    points
        .iter()
        .enumerate()
        .map(|(index, point)| OutlinePoint {
            number: ordinal(index),
            at: printer.place(point.across, point.down),
        })
        .collect()
}

/// The number of the corner that lies at a point.
pub(crate) fn corner_at(shape: &Shape, point: Point) -> Option<u32> {
    shape
        .corners
        .iter()
        .position(|corner| corner.at == point)
        .map(ordinal)
}

pub(crate) fn edge_kind(kind: EdgeKindMade) -> EdgeKind {
    match kind {
        EdgeKindMade::Top => EdgeKind::Top,
        EdgeKindMade::Side => EdgeKind::Side,
        EdgeKindMade::Lower => EdgeKind::Lower,
    }
}

/// The corners measured from the top left of the cut piece, stretched to its cut size: the outline
/// itself knows nothing of shrinkage.
fn from_top_left(piece: &PieceMade) -> Vec<Point> {
    let corners = || piece.outline.corners.iter().map(|corner| corner.at);
    let (left, right) = span(corners().map(|point| point.across));
    let (top, bottom) = span(corners().map(|point| point.down));
    let wider = piece.cut_width.ratio_to(right - left);
    let longer = piece.cut_length.ratio_to(bottom - top);
    corners()
        .map(|point| Point {
            across: stretched(point.across - left, wider),
            down: stretched(point.down - top, longer),
        })
        .collect()
}

fn span(lengths: impl Iterator<Item = Length> + Clone) -> (Length, Length) {
    let least = lengths.clone().min().unwrap_or_default();
    (least, lengths.max().unwrap_or_default())
}

fn stretched(length: Length, by: Option<Ratio>) -> Length {
    by.map_or(length, |by| length.scaled(by))
}

/// The right half of a closed line, from the fold outward: it begins where the lower edge meets the
/// fold and ends where the top edge does.
fn from_fold(points: &[Point], width: Length) -> Vec<Point> {
    let fold = width.divided(2);
    let mut half = Vec::new();
    let next = points.iter().cycle().skip(1);
    for (&from, &to) in points.iter().zip(next) {
        if from.across >= fold {
            half.push(from);
        }
        if (from.across < fold) != (to.across < fold) && from.across != fold && to.across != fold {
            half.push(crossing(from, to, fold));
        }
    }
    for point in &mut half {
        point.across -= fold;
    }
    half
}

/// Where a straight edge crosses the line straight down at `across`.
fn crossing(from: Point, to: Point, across: Length) -> Point {
    let part = (across - from.across).ratio_to(to.across - from.across);
    Point {
        across,
        down: from.down + stretched(to.down - from.down, part),
    }
}
