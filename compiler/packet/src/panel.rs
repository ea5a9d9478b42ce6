//! One kind of panel of a window.

use pelmet_model::{EdgeKind, Relief};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::{
    Crease, EdgeBand, FoldedPanel, Layers, Mark, Measure, Mitre, OrderStep, Piece, Place, Pleat,
    PleatStrips, Stretch, Times, TurnOfCloth, Weight,
};

/// A panel: its sizes, its folds, what is cut for it, what is marked on it and what holds it.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct Panel {
    /// The name the maker gave it.
    pub name: String,
    /// How many are made.
    pub quantity: u32,
    /// As it hangs, pleats laid.
    pub finished_width: Measure,
    /// Made up, before pleating.
    pub flat_width: Measure,
    /// What the shears follow: the face's whole width, allowances included.
    pub cut_width: Measure,
    /// What the shears follow: the face's length, allowances included.
    pub cut_length: Measure,
    /// From the heading line down, as it hangs.
    pub drop: Measure,
    /// Made up, heading included.
    pub made_length: Measure,
    /// From the made-up top edge down to the heading line.
    pub heading_depth: Measure,
    /// How it hangs, in words.
    pub heading: String,
    /// The name of the making method.
    pub making: String,
    /// Flat width over finished width.
    pub fullness: Option<Times>,
    /// By how much the finished width may be out from folding by hand.
    pub tolerance: Option<Tolerance>,
    /// The pleats, from left to right on the flat panel.
    pub pleats: Vec<Pleat>,
    /// How the pleats follow the print, where their rule asks for it.
    pub print_followed: Option<PrintFollowed>,
    /// What the creases lose in their turns; nothing where that is not counted.
    pub turn_of_cloth: Option<TurnOfCloth>,
    /// The creases, from left to right on the flat panel.
    pub creases: Vec<Crease>,
    /// The plain stretches between creases, from left to right on the flat panel.
    pub stretches: Vec<Stretch>,
    /// How many layers of the panel lie at each finished position, from left to right.
    pub layers: Vec<Layers>,
    /// The most layers of the panel anywhere; each has every layer of cloth the panel is made of.
    pub thickest: u32,
    /// How thick the thickest stack is, pressed, where its cloths say how thick they are.
    pub thickest_stack: Option<Measure>,
    /// The panel with its pleats laid; `null` where folding alone does not make the finished
    /// width, as in a gathered panel.
    pub folded: Option<FoldedPanel>,
    /// The sewn outline of the flat panel, corner by corner from the left end of the top edge, down
    /// the left side, along the lower edge and up the right side.
    pub outline: Vec<SewnCorner>,
    /// The corners at which its hems are mitred.
    pub mitres: Vec<Mitre>,
    /// The bands along its edges.
    pub bands: Vec<EdgeBand>,
    /// What is cut: the face first, then what lies behind it.
    pub pieces: Vec<Piece>,
    /// Width of its fusible tape, where its making method has one.
    pub tape_width: Option<Measure>,
    /// The lengths of fusible tape for one panel, corner to corner.
    pub tape: Vec<TapeRun>,
    /// Strips of that tape behind the folds of one panel.
    pub pleat_strips: Option<PleatStrips>,
    /// All the tape of one panel along its edges.
    pub tape_together: Measure,
    /// What holds one panel to its rod or board, strip by strip.
    pub fasteners: Vec<Fastener>,
    /// What to mark, in working order.
    pub marks: Vec<Mark>,
    /// What to do for one panel, step by step.
    pub making_order: Vec<OrderStep>,
    /// How far the drop can be corrected once it hangs.
    pub hang_range: Option<HangRange>,
    /// How far it reaches over a join on each side, for a panel that lies over the joins.
    pub covers_each_side: Option<Measure>,
    /// What one such panel weighs, where every cloth of it states its weight.
    pub weight: Option<Weight>,
}

/// By how much a width may be out.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct Tolerance {
    /// At worst, either way: every crease out the same way.
    pub worst: Measure,
    /// Likely, either way.
    pub likely: Measure,
}

/// How pleats follow the print: the same part of it shows on every one.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct PrintFollowed {
    /// From the middle of a pleat to the middle of the next on the flat panel, each such length once,
    /// shortest first. All are whole repeats of the print, as the cloth is once it has shrunk.
    pub apart: Vec<Measure>,
    /// Whether the right half mirrors the left, each showing a part of its own.
    pub in_each_half: bool,
}

/// A corner of the sewn outline.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct SewnCorner {
    /// Its number from 1.
    pub number: u32,
    /// Where it lies, from the left edge and the made-up top edge.
    pub at: Place,
    /// What its allowance calls for once sewn.
    pub relief: Option<Relief>,
    /// The kind of the edge that leads on from it.
    pub edge: EdgeKind,
    /// Length of that edge, along its curve where it has one.
    pub edge_length: Measure,
    /// The name the maker gave the corner.
    pub name: Option<String>,
    /// How that edge curves; nothing for a straight one.
    pub curve: Option<CurvedEdge>,
}

/// How an edge of the sewn outline curves.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct CurvedEdge {
    /// Slits to clip in the allowance along its concave stretches, so that it opens once turned.
    pub clips: u32,
    /// Wedges to cut out of the allowance along its convex stretches, so that it lies flat once
    /// turned.
    pub wedges: u32,
    /// The points between its corners, for a drawing.
    pub between: Vec<Place>,
}

/// One length of fusible tape.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct TapeRun {
    /// The edge it lies on.
    pub edge: EdgeKind,
    /// Number of the corner it starts at, where it starts at one.
    pub from_corner: Option<u32>,
    /// Number of the corner it ends at, where it ends at one.
    pub to_corner: Option<u32>,
    /// Where it starts.
    pub from: Place,
    /// Where it ends.
    pub to: Place,
    /// Its length, the turning opening left out.
    pub length: Measure,
}

/// A strip of fastener along the heading.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct Fastener {
    /// What it is called.
    pub name: String,
    /// Width of the strip.
    pub width: Measure,
    /// How long to cut it.
    pub length: Measure,
    /// How far its upper edge lies below the made-up top edge.
    pub down: Measure,
}

/// How far a drop can be corrected once the panel hangs, half the fastener still holding.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct HangRange {
    /// The shortest drop that can be set.
    pub shortest: Measure,
    /// The longest drop that can be set.
    pub longest: Measure,
}
