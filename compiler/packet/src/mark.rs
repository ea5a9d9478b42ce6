//! A mark on the flat, made-up panel.

use pelmet_model::{MarkKind, PleatKind, Relief, Toward};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::Measure;

/// Something to mark. Every mark is measured from one edge, so that rounding never adds up.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct Mark {
    /// Its number, in working order from 1.
    pub number: u32,
    /// What is marked.
    pub kind: MarkKind,
    /// What is marked, in words.
    pub name: String,
    /// From the left edge; nothing for a line that runs all across.
    pub from_left: Option<Measure>,
    /// From the centre line, negative to the left; nothing for a line that runs all across.
    pub from_centre: Option<Measure>,
    /// From the made-up top edge, where the mark has a height.
    pub down: Option<Measure>,
    /// What the allowance at a corner calls for once sewn.
    pub relief: Option<Relief>,
    /// The fold, where the mark is one.
    pub fold: Option<FoldMark>,
    /// The stitched pleat, where the mark is the first of its two points.
    pub stitch: Option<StitchMark>,
    /// The gathered run, where the mark is an end of one.
    pub gather: Option<GatherMark>,
}

/// A fold to lay: its crease is the mark, and it is brought to a line.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct FoldMark {
    /// The pleat's number from the left, from 1.
    pub pleat: u32,
    /// How that pleat is folded.
    pub pleat_kind: PleatKind,
    /// How deep the cloth is folded here.
    pub depth: Measure,
    /// The line it is brought to, from the left edge.
    pub brought_to_from_left: Measure,
    /// The line it is brought to, from the centre line, negative to the left.
    pub brought_to_from_centre: Measure,
    /// The way it points as the panel hangs.
    pub toward: Toward,
}

/// Two points to stitch together: the mark is the left one.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct StitchMark {
    /// The pleat's number from the left, from 1.
    pub pleat: u32,
    /// How that pleat is made.
    pub pleat_kind: PleatKind,
    /// Depth of one finger, or of the sewn fold before it is shaped.
    pub depth: Measure,
    /// How far apart the two points stay.
    pub leaves: Measure,
    /// The other point, from the left edge.
    pub other_from_left: Measure,
    /// The other point, from the centre line, negative to the left.
    pub other_from_centre: Measure,
}

/// A run to draw up.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct GatherMark {
    /// Its number among the pleats from the left, from 1.
    pub pleat: u32,
    /// Gathers or a pencil heading.
    pub pleat_kind: PleatKind,
    /// The finished width the whole run is drawn up to.
    pub drawn_to: Measure,
}
