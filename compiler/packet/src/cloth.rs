//! A cloth to buy and how it is laid out.

use pelmet_model::{LayerKind, Match, Way};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::{Amount, Measure};

/// One cloth: how much of it to buy, and where every piece lies on the bolt.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct Cloth {
    /// The name the maker gave it.
    pub name: String,
    /// From edge to edge, selvages included.
    pub width: Measure,
    /// The width pieces may use: less a selvage on each side.
    pub usable_width: Measure,
    /// The period of its print, where it has one.
    pub repeat: Option<PrintRepeat>,
    /// How far from the cut end of each bolt the part of the print must lie that is held: the motif's
    /// centre, or what is to hang at the heading line. Nothing where no print is held.
    pub print_line: Option<Measure>,
    /// Where a line of the print lies across the bolt, from the left end of the usable width: the first
    /// of those that come round across. Nothing where the print holds no piece across.
    pub print_line_across: Option<Measure>,
    /// Which ways up a piece may lie.
    pub way_up: Way,
    /// What must be cut around, in the order along the bolts.
    #[serde(default)]
    pub flaws: Vec<Flaw>,
    /// How many pieces are cut from it; each strip of a joined piece counts.
    pub piece_count: u32,
    /// Where the last piece ends: the length this layout uses.
    pub exact: Measure,
    /// The length to buy: `exact` rounded up to the buying step, on every bolt.
    pub bought: Measure,
    /// What the workroom's rule of thumb would buy: each kind of piece for itself, as many side by
    /// side as the width takes, each cut rounded up to the repeat.
    pub rule_of_thumb: Measure,
    /// What no layout can beat.
    pub at_least: Measure,
    /// Whether the layout is so good that no other can buy less.
    pub cannot_be_beaten: bool,
    /// Whether the search for a shorter layout was broken off; a whole one may find less to buy.
    pub search_stopped: bool,
    /// What is used of each bolt; one, unless the bolt has an end.
    pub bolts: Vec<BoltUsed>,
    /// What it costs by length.
    pub price: Option<Price>,
    /// What the bought length costs.
    pub cost: Option<Amount>,
    /// What the exact length would cost, were it sold so.
    pub exact_cost: Option<Amount>,
    /// What the rule of thumb would cost.
    pub rule_of_thumb_cost: Option<Amount>,
    /// What the length that no layout can beat would cost, were it sold so.
    pub at_least_cost: Option<Amount>,
    /// The ways to lay it that were compared, where the design leaves that to what saves.
    #[serde(default)]
    pub ways_compared: Vec<WayCompared>,
    /// Which stretches of the bolts are folded on the table for pieces cut on the fold, and which lie
    /// open, in order; none where no piece is cut on the fold.
    pub sections: Vec<Section>,
    /// Every piece, in cutting order.
    pub placed: Vec<PlacedPiece>,
    /// The cuts straight across the bolt, in cutting order; every piece lies inside one band.
    pub bands: Vec<Band>,
}

/// What is used of one bolt.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct BoltUsed {
    /// Its number, from 1.
    pub number: u32,
    /// To the end of its last piece.
    pub exact: Measure,
    /// The length to buy of it.
    pub bought: Measure,
}

/// A part of a bolt that no piece lies on.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct Flaw {
    /// The bolt, from 1.
    pub bolt: u32,
    /// Where it begins, from the cut end of the bolt.
    pub from: Measure,
    /// Where it ends, from the cut end of the bolt.
    pub to: Measure,
    /// Its left edge, from the left end of the usable width.
    pub left: Measure,
    /// Its right edge, from the left end of the usable width.
    pub right: Measure,
    /// Whether it reaches across the whole usable width.
    pub whole_width: bool,
}

/// A way to lay a cloth, and what it buys.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct WayCompared {
    /// Which pieces lie along the cloth.
    pub along: PiecesAlong,
    /// The length to buy.
    pub bought: Measure,
    /// The money for that length, where the cloth has a price.
    pub cost: Option<Amount>,
    /// Whether the cloth is laid so.
    pub is_used: bool,
}

/// Which pieces lie along the cloth, their own width running with the bolt's length.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum PiecesAlong {
    /// None; what is too wide is joined.
    None,
    /// Those that are too wide for the cloth and not too long to lie along it.
    TooWide,
    /// All that are not too long for it.
    AllThatFit,
}

/// The period of a print.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct PrintRepeat {
    /// Along the bolt.
    pub along: Option<Measure>,
    /// Across the bolt.
    pub across: Option<Measure>,
    /// How one width meets the next.
    pub matching: Match,
}

/// A price for a length.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct Price {
    /// The money.
    pub amount: Amount,
    /// The length it buys.
    pub per: Measure,
    /// Both in words: `32.00 per yd`.
    pub text: String,
}

/// One piece on the bolt.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct PlacedPiece {
    /// Its number on this cloth, in cutting order from 1.
    pub number: u32,
    /// What it is, in words: window, panel, layer and, of a joined piece, the strip.
    pub name: String,
    /// The window it belongs to.
    pub window: String,
    /// The panel it belongs to.
    pub panel: String,
    /// The layer it is.
    pub layer: LayerKind,
    /// Which strip it is, from the left and from 1, where the piece is joined from several widths.
    pub strip: Option<u32>,
    /// Which of the pieces alike, from 1.
    pub copy: u32,
    /// How many pieces are alike.
    pub copies: u32,
    /// The bolt it lies on, from 1.
    pub bolt: u32,
    /// Its left edge, from the left end of the usable width.
    pub across: Measure,
    /// Its top edge, from the cut end of its bolt.
    pub along: Measure,
    /// Its width, across the bolt.
    pub width: Measure,
    /// Its length, along the bolt.
    pub length: Measure,
    /// Whether it lies upside down.
    pub turned: bool,
    /// Whether it lies along the cloth, its own width running with the bolt's length.
    pub railroaded: bool,
    /// Whether another piece reaches into its width and length, so that both are cut along their
    /// outlines.
    pub nested: bool,
    /// The corners of its outline where it lies; none for a rectangle. Its straight sides stay within
    /// 0.1 mm of the line that is cut.
    pub outline: Vec<PlacedCorner>,
    /// Where across it the print is held, from the left end of the usable width.
    pub print_across: Option<Measure>,
    /// Where along it the print is held, from the cut end of the bolt.
    pub print_along: Option<Measure>,
    /// Where the cloth is folded, from the left end of the usable width, for a piece that is cut
    /// from doubled cloth.
    pub fold_at: Option<Measure>,
    /// Where the middle of a piece lies that is cut on the fold by its pattern, but here lies where
    /// the cloth is open: from the left end of the usable width, or from the cut end of the bolt if
    /// it lies along the cloth.
    pub middle_at: Option<Measure>,
}

/// A stretch of a bolt that lies on the table in one way, cut off straight across at both ends.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct Section {
    /// The bolt, from 1.
    pub bolt: u32,
    /// Where it begins, from the cut end of the bolt.
    pub from: Measure,
    /// Where it is cut off, from the cut end of the bolt.
    pub to: Measure,
    /// Where the left edge is turned over.
    pub left_fold: Option<Fold>,
    /// Where the right edge is turned over.
    pub right_fold: Option<Fold>,
}

/// An edge of the cloth that is turned over on to it.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct Fold {
    /// Where the fold lies, from the left end of the usable width.
    pub at: Measure,
    /// Where the end of the usable width that is turned over comes to lie, from its left end.
    pub edge_comes_to: Measure,
}

/// A corner of an outline on the bolt.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct PlacedCorner {
    /// From the left end of the usable width.
    pub across: Measure,
    /// From the cut end of the bolt.
    pub along: Measure,
}

/// A part of the bolt between two cuts straight across.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct Band {
    /// The bolt, from 1.
    pub bolt: u32,
    /// Where the first of its pieces begins, from the cut end of the bolt.
    pub from: Measure,
    /// Where it is cut off, from the cut end of the bolt.
    pub to: Measure,
    /// The pieces in it by number, from the left.
    pub pieces: Vec<u32>,
}
