//! Numbers along the lines of a piece: of the corners and points of its cutting line outside it, and
//! the lengths of its sewn edges inside.

use pelmet_packet::{LayerKind, OutlinePoint};

use super::PieceDrawn;
use crate::drawing::{Align, Drawing, LineKind, PaperPoint, TextSize, WordsApart, at, width_of};

/// How far a number stands off its line.
const OFF: f64 = 2.6;
/// How long the tick at a point is.
const TICK: f64 = 1.2;

pub(super) fn tell(outline: PieceDrawn<'_>, labels: &mut WordsApart, drawing: &mut Drawing) {
    let cut = &outline.piece.outline;
    // What is written first keeps its place, and what would lie on it is left out.
    // Corners first: they must be told, points of a curve only where there is room.
    for on_curve in [false, true] {
        for (index, it) in cut.iter().enumerate() {
            let Some(number) = it.number.filter(|_| it.on_curve == on_curve) else {
                continue;
            };
            let (point, out) = (outline.point(it), outward(outline, cut, index));
            let place = moved(point, out, OFF);
            let (place, align) = beside(place, out);
            let told = labels.write(place, align, TextSize::Small, &number.to_string(), drawing);
            if told {
                drawing.line(LineKind::Measure, [point, moved(point, out, TICK)]);
            }
        }
    }
    if outline.piece.layer == LayerKind::Face {
        tell_edges(outline, labels, drawing);
    }
}

/// Inside each sewn edge how long it is once sewn.
fn tell_edges(outline: PieceDrawn<'_>, labels: &mut WordsApart, drawing: &mut Drawing) {
    let sewn = &outline.piece.sewn;
    let corners = &outline.panel.outline;
    let following = corners.iter().cycle().skip(1);
    for (corner, next) in corners.iter().zip(following) {
        let Some(from) = sewn.iter().position(|it| it.number == Some(corner.number)) else {
            continue;
        };
        let after = || {
            sewn.iter()
                .cycle()
                .skip(from.saturating_add(1))
                .take(sewn.len())
        };
        // The edge is not this piece's own where a band takes its place.
        if after().find_map(|it| it.number) != Some(next.number) {
            continue;
        }
        let between = after().take_while(|it| it.number.is_none()).count();
        let (middle, out) = middle(outline, sewn, from, between.saturating_add(1));
        let (place, align) = beside(moved(middle, out, -1.6), at(-out.x, -out.y));
        let (place, align) = off_the_centre(outline, place, align, &corner.edge_length.text);
        labels.write(
            place,
            align,
            TextSize::Small,
            &corner.edge_length.text,
            drawing,
        );
    }
}

/// Words that would stand on the line down the middle go to its right.
fn off_the_centre(
    outline: PieceDrawn<'_>,
    place: PaperPoint,
    align: Align,
    text: &str,
) -> (PaperPoint, Align) {
    let half = width_of(text, TextSize::Small) / 2.0;
    match outline.centre() {
        Some(centre) if align == Align::Middle && (place.x - centre).abs() < half => {
            (at(centre + 1.2, place.y), Align::Left)
        }
        _ => (place, align),
    }
}

/// The middle of an edge of so many straight parts, and the way out there.
fn middle(
    outline: PieceDrawn<'_>,
    line: &[OutlinePoint],
    from: usize,
    parts: usize,
) -> (PaperPoint, PaperPoint) {
    let around = |steps: usize| {
        let index = from.saturating_add(steps);
        let index = index.checked_rem(line.len()).unwrap_or(0);
        line.get(index).map_or(at(0.0, 0.0), |it| outline.point(it))
    };
    let half = parts / 2;
    let (one, other) = if parts.is_multiple_of(2) {
        (
            around(half.saturating_sub(1)),
            around(half.saturating_add(1)),
        )
    } else {
        (around(half), around(half.saturating_add(1)))
    };
    let middle = at((one.x + other.x) / 2.0, (one.y + other.y) / 2.0);
    (middle, left_of(one, other))
}

/// The way out of a piece at a point of its line, one millimetre long.
pub(super) fn outward(outline: PieceDrawn<'_>, line: &[OutlinePoint], index: usize) -> PaperPoint {
    let neighbour = |index: usize| {
        let index = index.checked_rem(line.len()).unwrap_or(0);
        line.get(index).map_or(at(0.0, 0.0), |it| outline.point(it))
    };
    let before = neighbour(index.saturating_add(line.len()).saturating_sub(1));
    let (here, after) = (neighbour(index), neighbour(index.saturating_add(1)));
    let (one, other) = (left_of(before, here), left_of(here, after));
    unit(at(one.x + other.x, one.y + other.y))
}

/// What lies outside a line that goes down the left side and along the lower edge: its right hand side
/// as seen on paper, where down is positive.
fn left_of(from: PaperPoint, to: PaperPoint) -> PaperPoint {
    unit(at(from.y - to.y, to.x - from.x))
}

fn unit(way: PaperPoint) -> PaperPoint {
    let length = way.x.hypot(way.y);
    if length < 1e-9 {
        return at(0.0, 0.0);
    }
    at(way.x / length, way.y / length)
}

fn moved(point: PaperPoint, way: PaperPoint, by: f64) -> PaperPoint {
    at(point.x + way.x * by, point.y + way.y * by)
}

/// Where words stand whose nearest edge is to lie at a place, seen along a way.
fn beside(place: PaperPoint, way: PaperPoint) -> (PaperPoint, Align) {
    let align = if way.x > 0.5 {
        Align::Left
    } else if way.x < -0.5 {
        Align::Right
    } else {
        Align::Middle
    };
    // The foot of the letters: they hang below a place beneath a line and stand above one over it.
    let height = TextSize::Small.millimetres() * 0.75;
    (at(place.x, place.y + height * (way.y + 1.0) / 2.0), align)
}
