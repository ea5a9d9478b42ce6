//! A band along an edge of a panel.

use pelmet_model::BandEdge;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::{Measure, Place};

/// A band of another cloth along an edge.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct EdgeBand {
    /// The edge it lies along.
    pub edge: BandEdge,
    /// Its finished depth.
    pub depth: Measure,
    /// The seams that hold it: along the face, and the mitre where it meets the next band.
    pub seams: Vec<BandSeam>,
}

/// A line along which a band is sewn: to the face, or in a mitre to the next band.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct BandSeam {
    /// Where it starts.
    pub from: Place,
    /// The points between its ends where it curves, for a drawing.
    pub between: Vec<Place>,
    /// Where it ends.
    pub to: Place,
    /// Its length, along its curve where it has one.
    pub length: Measure,
}
