//! A window and what dresses it.

use pelmet_model::SupportKind;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::{Measure, Panel, RodCheck, Size, Weight};

/// One window: what its panels hang from, and each kind of them.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct Window {
    /// The name the maker gave it.
    pub name: String,
    /// Width and height of the opening.
    pub opening: Option<Size>,
    /// Whether the room is public, so that the flame resistance of its cloths is asked for.
    pub public_room: bool,
    /// What the panels hang from.
    pub support: Support,
    /// Height of the support's top above the floor.
    pub top_at: Option<Measure>,
    /// The panels side by side, and the sum of their widths.
    pub row: Row,
    /// The kinds of panel: those of the row from the left, then those over its joins.
    pub panels: Vec<Panel>,
    /// What all its panels weigh together, where every cloth of them states its weight.
    pub weight: Option<Weight>,
    /// The cloths of its panels that state no weight, by name.
    pub cloths_without_weight: Vec<String>,
    /// What its rod makes of that weight.
    pub rod_check: Option<RodCheck>,
    /// Why nothing can be said of its rod, in words.
    pub rod_not_checked: Option<String>,
}

/// A rod or a board.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct Support {
    /// Which of the two.
    pub kind: SupportKind,
    /// The name the maker gave it.
    pub name: String,
    /// The length the panels cover.
    pub length: Measure,
    /// Outside diameter of a rod.
    pub diameter: Option<Measure>,
    /// How far its front stands off the wall.
    pub projection: Option<Measure>,
}

/// The panels side by side along the support.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct Row {
    /// Every panel of the row, left to right.
    pub panels: Vec<RowPanel>,
    /// The panels over its joins, by name; one of each over every join.
    pub over_joins: Vec<String>,
    /// How far neighbours lie over each other.
    pub overlap: Measure,
    /// The return at each end.
    pub returns: Measure,
    /// The length to cover: the support's and both returns.
    pub to_cover: Measure,
    /// The length covered: finished widths less overlaps.
    pub covered: Measure,
    /// What is covered beyond the length to cover; negative where some of it is left bare.
    pub spare: Measure,
    /// The joins, from the left end of the row.
    pub joins: Vec<Measure>,
    /// The sum of the widths, written out.
    pub sum: String,
    /// The sum of the length to cover, written out.
    pub to_cover_sum: String,
}

/// One panel in its place in the row.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct RowPanel {
    /// Which kind of panel hangs here, by name.
    pub name: String,
    /// How wide it hangs, the part under its neighbours included.
    pub finished_width: Measure,
}
