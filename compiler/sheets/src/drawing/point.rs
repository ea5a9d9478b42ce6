//! Places on paper.

/// A place on the paper.
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

pub(crate) fn at(x: f64, y: f64) -> PaperPoint {
    PaperPoint { x, y }
}
