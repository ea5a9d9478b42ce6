//! A mitred corner, as it is marked on the cut face.

use pelmet_model::MitrePlace;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::Measure;

/// A corner at which the hems of a side and of the lower edge are mitred.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct Mitre {
    /// The corner's number in the sewn outline.
    pub corner: u32,
    /// Where the line of the mitre runs over the cut face before anything is turned, from the side's
    /// cut edge to the lower one. With the raw edges turned under it lies straight.
    pub line: Vec<MitrePoint>,
    /// Length of the finished mitre, from the corner to where the hems meet.
    pub length: Measure,
    /// What is left beyond the line; the cloth outside that may be cut away.
    pub kept: Measure,
}

/// A point of the line of a mitre.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct MitrePoint {
    /// What lies there.
    pub place: MitrePlace,
    /// How far in from the cut edge of the side.
    pub in_from_side: Measure,
    /// How far up from the cut lower edge.
    pub up_from_lower: Measure,
}
