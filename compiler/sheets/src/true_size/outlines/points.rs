//! Points of the lines of a piece.

use pelmet_packet::OutlinePoint;

use crate::drawing::{PaperPoint, at};

/// What is written beside the cross at the centre of a motif.
pub(crate) const MOTIF: &str = "centre of the motif";

/// How far a cross reaches to either side of its place.
const CROSS: f64 = 5.0;

/// The two strokes of an upright cross at a place.
pub(crate) fn cross(place: PaperPoint) -> [[PaperPoint; 2]; 2] {
    [(CROSS, 0.0), (0.0, CROSS)]
        .map(|(x, y)| [at(place.x - x, place.y - y), at(place.x + x, place.y + y)])
}

/// The points of a line on a piece, in millimetres from the edges it is measured from.
pub(crate) fn points(line: &[OutlinePoint]) -> Vec<PaperPoint> {
    let place = |point: &OutlinePoint| at(point.at.across.mm, point.at.down.mm);
    line.iter().map(place).collect()
}
