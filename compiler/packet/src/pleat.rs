//! Pleats, and the strip they are folded from.

use pelmet_model::{CreaseKind, PleatKind};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::{Measure, Run};

/// One pleat on the flat panel.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct Pleat {
    /// Its number from the left, from 1.
    pub number: u32,
    /// How it is folded or drawn.
    pub kind: PleatKind,
    /// Depth of one fold of cloth.
    pub depth: Measure,
    /// Width of the face, for a pleat that has one; what a stitched pleat leaves between its points,
    /// and gathers once drawn up.
    pub face: Option<Measure>,
    /// Flat width it takes up.
    pub take_up: Measure,
    /// The flat cloth it uses.
    pub flat: Run,
}

/// A crease across the flat panel.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct Crease {
    /// From the left edge of the flat panel; the middle of its turn, where that is counted.
    pub at: Measure,
    /// The way it is folded.
    pub kind: CreaseKind,
    /// Number of the pleat it belongs to.
    pub pleat: u32,
}

/// What the creases of a panel lose of its flat width, since the cloth goes round them.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct TurnOfCloth {
    /// How many creases are pressed.
    pub creases: u32,
    /// What each of them loses.
    pub each: Measure,
    /// What all of them lose: the flat width is the finished width, what the pleats take up, and
    /// this.
    pub together: Measure,
}

/// A plain stretch of the panel between two creases.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct Stretch {
    /// Where it lies on the flat panel, with its half of the turn at each crease.
    pub flat: Run,
    /// Where it comes to lie, from the left end of the finished width; it runs backward where the
    /// stretch is turned over.
    pub finished: Run,
    /// Whether it shows its face; otherwise it is turned over and shows the lining.
    pub face_up: bool,
    /// Its place in the stack, 0 at the back.
    pub height: u32,
    /// Whether it is drawn up, standing out from the panel, so that it keeps less than its width.
    pub drawn_up: bool,
    /// How much of it is seen.
    pub seen: Seen,
}

/// How much of a stretch is seen.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum Seen {
    /// All of it.
    Visible,
    /// Some of it.
    PartlyVisible,
    /// None of it.
    Hidden,
}

/// A run of finished positions with the same layers over it.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct Layers {
    /// From the left end of the finished width.
    pub finished: Run,
    /// How many layers of the panel lie there.
    pub layers: u32,
}
