//! A piece to cut.

use pelmet_model::{EdgeKind, LayerKind};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::{Measure, Place, Surface};

/// One cut piece.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct Piece {
    /// What it is, in words: `wing face`.
    pub label: String,
    /// The layer of the panel it is.
    pub layer: LayerKind,
    /// The cloth it is cut from.
    pub cloth: String,
    /// How many are cut, for all the panels of this kind in the window.
    pub quantity: u32,
    /// Width of the whole piece, allowances and shrinkage included.
    pub cut_width: Measure,
    /// Length of the whole piece, allowances and shrinkage included.
    pub cut_length: Measure,
    /// Whether it is cut on the fold of doubled cloth.
    pub on_fold: bool,
    /// Whether its outline is the panel's turned over, as of a lining whose halves are not alike.
    pub mirrored: bool,
    /// Whether it is cut along the cloth, its width running with the bolt's length.
    pub railroaded: bool,
    /// The width to draw: half the cut width for a piece cut on the fold, otherwise all of it.
    pub draw_width: Measure,
    /// How far below its cut top edge it is folded across, where its lower half comes up behind as the
    /// lining.
    pub folded_at: Option<Measure>,
    /// The part of its length and width that is added because the cloth will shrink, in words.
    pub shrinkage: Option<String>,
    /// What is added at each kind of edge.
    pub allowances: Vec<CutAllowance>,
    /// The straight edge that `across` of each outline point is measured from.
    pub outline_from: MeasuredFrom,
    /// The line the shears follow, point by point; of a piece cut on the fold, the half to draw.
    pub outline: Vec<OutlinePoint>,
    /// The sewn line inside it, measured from the same edges; of a hemmed edge, the finished edge. A
    /// corner of the panel's sewn outline has its number there.
    pub sewn: Vec<OutlinePoint>,
    /// The centre of the motif it carries, measured from the same edges.
    pub motif: Option<Place>,
    /// Area inside the whole cutting line, before shrinkage is added.
    pub area: Surface,
    /// The strips and seams, for a piece joined from several widths of cloth.
    pub joined: Option<JoinedWidths>,
}

/// What is added at one kind of edge.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct CutAllowance {
    /// The kind of edge.
    pub edge: EdgeKind,
    /// All that lies between the sewn line and the cut, extra length and width included.
    pub total: Measure,
    /// What it is for, in words.
    pub text: String,
}

/// The straight edge a cutting line is measured from.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum MeasuredFrom {
    /// The left cut edge.
    LeftEdge,
    /// The fold of the doubled cloth.
    Fold,
}

/// A point of a line on a piece: a corner, or one of the points between which a curve may be drawn as
/// straight lines.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct OutlinePoint {
    /// Its number from 1, for a corner and for those points of a curve from which it is drawn by
    /// hand; nothing for the points between, which only a drawing needs.
    pub number: Option<u32>,
    /// Where it lies, from the straight edge named and from the top cut edge.
    pub at: Place,
    /// Whether it lies on a curve, between two corners.
    pub on_curve: bool,
    /// The arc of a circle that begins there, where one does.
    pub arc: Option<Arc>,
}

/// An arc of a circle along a line, as a compass, a string or a plotter draws it.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct Arc {
    /// How many of the points that follow lie on it; the last of them is its end.
    pub points: u32,
    /// The centre of its circle, measured from the same edges as its points.
    pub centre: Place,
    /// The radius of its circle.
    pub radius: Measure,
    /// The tangent of a quarter of the angle it turns through, positive where it bends away from the
    /// cloth.
    pub bulge: f64,
}

/// How a piece is joined from several widths of cloth.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct JoinedWidths {
    /// Cut width of each strip, left to right.
    pub strips: Vec<Measure>,
    /// The seams between them, left to right.
    pub seams: Vec<JoinSeam>,
    /// Seam allowance on each side of a join, included in the strips.
    pub allowance: Measure,
}

/// A seam between two strips.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct JoinSeam {
    /// Its sewn line, from the left edge of the flat panel.
    pub at: Measure,
    /// Its sewn line, from the left cut edge of the whole piece.
    pub from_cut_edge: Measure,
    /// Whether a pleat hides it.
    pub hidden: bool,
}
