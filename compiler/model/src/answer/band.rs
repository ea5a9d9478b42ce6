//! Bands of another cloth along the edges of a panel, as they are made up.

use pelmet_measure::Length;

use crate::{BandEdge, Point};

/// A band as it is made up.
#[derive(Clone, PartialEq, Debug)]
pub struct BandMade {
    /// The edge it lies along.
    pub edge: BandEdge,
    /// Its finished depth.
    pub depth: Length,
    /// The corners of the line along which it meets the face, in the order of the panel's corners.
    pub corners: Vec<Point>,
    /// The seams that hold it: along the face, and the mitre at its end.
    pub seams: Vec<BandSeamMade>,
}

/// A seam of a band.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct BandSeamMade {
    /// Where it starts.
    pub from: Point,
    /// The points between, where it curves.
    pub between: Vec<Point>,
    /// Where it ends.
    pub to: Point,
    /// From end to end, along its curve where it has one.
    pub length: Length,
}
