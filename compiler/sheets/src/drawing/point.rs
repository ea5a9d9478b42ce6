//! Places on paper.

/// A place in millimetres from the left upper corner, x to the right and y down.
#[derive(Copy, Clone, PartialEq, Debug)]
pub(crate) struct PaperPoint {
    pub(crate) x: f64,
    pub(crate) y: f64,
}

/// A rectangle by two opposite corners.
pub(crate) fn rectangle(one: PaperPoint, other: PaperPoint) -> [PaperPoint; 4] {
    let at = |x, y| PaperPoint { x, y };
    [one, at(other.x, one.y), other, at(one.x, other.y)]
}

/// The place so far to the right and so far down.
pub(crate) fn at(x: f64, y: f64) -> PaperPoint {
    PaperPoint { x, y }
}
