//! Outlines as numbers: the sewn one corner by corner, the cutting line from two straight edges.

use pelmet_measure::{Length, Ratio};
use pelmet_model::{Circle, PieceMade, Point, Shape};
use pelmet_packet::{CurvedEdge, OutlinePoint, SewnCorner};

use super::arc::{LinePoint, arcs};
use super::count::{number, ordinal};
use super::printer::Printer;

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
            relief: corner.relief,
            edge: edge.kind,
            edge_length: printer.mark(edge.length),
            name: corner.name.clone(),
            curve: edge.curve.as_ref().map(|curve| CurvedEdge {
                clips: curve.clips,
                wedges: curve.wedges,
                between: curve
                    .between
                    .iter()
                    .map(|point| printer.place(point.across, point.down))
                    .collect(),
            }),
        })
        .collect()
}

/// A curve is drawn by hand from points about so far apart, an inch. Common practice, no source.
const PLOTTED_EVERY: Length = Length::INCH;

/// The cutting line of a piece from its left edge and its top, or from its fold and its top;
/// shrinkage included.
pub(crate) fn cutting_line(piece: &PieceMade, printer: &Printer<'_>) -> Vec<OutlinePoint> {
    let points = line(piece, &piece.outline, |_| None);
    let mut numbers = 1_u32..;
    let plotted = plotted(&points).into_iter();
    let numbers = plotted.map(|plotted| plotted.then(|| numbers.next()).flatten());
    told(&points, numbers, printer)
}

/// The sewn line of a piece, measured as its cutting line is, with the numbers of the panel's corners.
pub(crate) fn sewn_line(
    piece: &PieceMade,
    panel: &Shape,
    printer: &Printer<'_>,
) -> Vec<OutlinePoint> {
    let turned_over = piece.mirrored.then(|| pelmet_workroom::mirrored(panel));
    let corners = number(panel.corners.len());
    let points = line(piece, &piece.sewn, |at| match &turned_over {
        None => corner_at(panel, at),
        // Walked the other way round, so its numbers run backward.
        Some(mirrored) => {
            corner_at(mirrored, at).map(|number| corners.saturating_add(1).saturating_sub(number))
        }
    });
    told(&points, points.iter().map(|point| point.corner), printer)
}

/// The points of a line on a piece, with their numbers and the arcs they lie on.
fn told(
    points: &[LinePoint],
    numbers: impl Iterator<Item = Option<u32>>,
    printer: &Printer<'_>,
) -> Vec<OutlinePoint> {
    let arcs = arcs(points, printer);
    points
        .iter()
        .zip(numbers)
        .zip(arcs)
        .map(|((point, number), arc)| OutlinePoint {
            number,
            at: printer.place(point.at.across, point.at.down),
            on_curve: point.on_curve,
            arc,
        })
        .collect()
}

/// Which of the points are needed to draw the line by hand: every corner, and of each curve points
/// at about equal distances.
fn plotted(points: &[LinePoint]) -> Vec<bool> {
    let mut plotted = Vec::with_capacity(points.len());
    // How far along its curve each point lies, up to the corner that ends it.
    let mut along: Vec<Length> = vec![];
    let mut before = points.last().copied();
    for point in points.iter().chain(points.first()) {
        let step = before.map_or(Length::ZERO, |before| distance(before.at, point.at));
        before = Some(*point);
        if point.on_curve {
            along.push(along.last().copied().unwrap_or_default() + step);
            continue;
        }
        plotted.extend(nearest_to_parts(&along, step));
        along.clear();
        plotted.push(true);
    }
    plotted.truncate(points.len());
    plotted
}

/// For the points of one curve, by their distance from its start and with what is left from the
/// last of them to its end, whether each comes next to an end of one of its equal parts.
fn nearest_to_parts(along: &[Length], rest: Length) -> Vec<bool> {
    let whole = along.last().copied().unwrap_or_default() + rest;
    let parts = whole
        .round_to(PLOTTED_EVERY)
        .ratio_to(PLOTTED_EVERY)
        .map_or(1, |parts| parts.to_integer())
        .max(2);
    let part_of = |length: Length| {
        let part = length.ratio_to(whole)?;
        part.numer().checked_mul(parts)?.checked_div(*part.denom())
    };
    let starts = std::iter::once(Length::ZERO).chain(along.iter().copied());
    starts
        .zip(along)
        .map(|(before, here)| part_of(before) != part_of(*here))
        .collect()
}

fn distance(from: Point, to: Point) -> Length {
    let (across, down) = (to.across - from.across, to.down - from.down);
    let millimetres = across.as_millimetres_f64().hypot(down.as_millimetres_f64());
    Length::from_millimetres_f64(millimetres).unwrap_or(Length::LARGEST)
}

/// The number of the corner that lies at a point.
pub(crate) fn corner_at(shape: &Shape, point: Point) -> Option<u32> {
    shape
        .corners
        .iter()
        .position(|corner| corner.at == point)
        .map(ordinal)
}

/// The points of a line that is drawn on a piece, from the edges the piece is measured from.
fn line(piece: &PieceMade, line: &Shape, corner: impl Fn(Point) -> Option<u32>) -> Vec<LinePoint> {
    let points = from_top_left(piece, line, corner);
    if piece.on_fold {
        from_fold(&points, piece.cut_width)
    } else {
        points
    }
}

/// The points measured from the top left of the cut piece, stretched to its cut size: the outline
/// itself knows nothing of shrinkage.
fn from_top_left(
    piece: &PieceMade,
    line: &Shape,
    corner: impl Fn(Point) -> Option<u32>,
) -> Vec<LinePoint> {
    let (least, most) = piece.outline.bounds();
    let wider = piece.cut_width.ratio_to(most.across - least.across);
    let longer = piece.cut_length.ratio_to(most.down - least.down);
    let stretch = |at: Point| Point {
        across: stretched(at.across - least.across, wider),
        down: stretched(at.down - least.down, longer),
    };
    let parts = line.corners.iter().zip(&line.edges);
    let points = parts.flat_map(|(begins, edge)| {
        let circle = edge.curve.as_ref().and_then(|curve| curve.circle);
        let circle = circle.map(|circle| Circle {
            centre: stretch(circle.centre),
            radius: stretched(circle.radius, wider),
            ..circle
        });
        let between = edge.between().iter().map(move |at| LinePoint {
            at: stretch(*at),
            on_curve: true,
            circle,
            corner: None,
        });
        let begins = LinePoint {
            at: stretch(begins.at),
            on_curve: false,
            circle: None,
            corner: corner(begins.at),
        };
        std::iter::once(begins).chain(between)
    });
    points.collect()
}

fn stretched(length: Length, by: Option<Ratio>) -> Length {
    by.map_or(length, |by| length.scaled(by))
}

/// The right half of a closed line, from the fold outward: it begins where the lower edge meets the
/// fold and ends where the top edge does.
fn from_fold(points: &[LinePoint], width: Length) -> Vec<LinePoint> {
    let fold = width.divided(2);
    let mut half = Vec::new();
    let next = points.iter().cycle().skip(1);
    for (&from, &to) in points.iter().zip(next) {
        if from.at.across >= fold {
            half.push(LinePoint {
                // Where a curve begins or ends at the fold, the half to draw has a corner.
                on_curve: from.on_curve && from.at.across != fold,
                ..from
            });
        }
        let (from, to) = (from.at, to.at);
        if (from.across < fold) != (to.across < fold) && from.across != fold && to.across != fold {
            half.push(LinePoint {
                at: crossing(from, to, fold),
                on_curve: false,
                circle: None,
                corner: None,
            });
        }
    }
    for point in &mut half {
        point.at.across -= fold;
        if let Some(circle) = &mut point.circle {
            circle.centre.across -= fold;
        }
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
