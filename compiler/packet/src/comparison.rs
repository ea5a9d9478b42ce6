//! What a job would take of other cloths.

use pelmet_model::Way;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::{Amount, Measure, PiecesAlong, PrintRepeat};

/// What a job would take if one of its cloths were another, cloth by cloth.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct ClothComparison {
    /// The title of the job.
    pub title: String,
    /// The cloths that were asked about.
    pub cloths: Vec<ClothCompared>,
}

/// One cloth of a job, and others in its place.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct ClothCompared {
    /// The cloth that might be replaced, by the name the maker gave it.
    pub name: String,
    /// The cloth as it is, then every other.
    pub trials: Vec<ClothTrial>,
}

/// One cloth in the place of another.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct ClothTrial {
    /// What is different, as it was asked for: `width: 60 in`, or the name of another cloth; `as it is`.
    pub what: String,
    /// From edge to edge, selvages included.
    pub width: Measure,
    /// The period of its print, where it has one.
    pub repeat: Option<PrintRepeat>,
    /// Which ways up a piece may lie.
    pub way_up: Way,
    /// Which pieces lie along the cloth.
    pub along: PiecesAlong,
    /// What the job takes of it; nothing where it cannot be made so.
    pub taken: Option<ClothTaken>,
    /// Why the job cannot be made so.
    pub impossible: Option<String>,
}

/// What a job takes of a cloth.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct ClothTaken {
    /// How many pieces are cut; each strip of a joined piece counts.
    pub piece_count: u32,
    /// Where the last piece ends.
    pub exact: Measure,
    /// The length to buy.
    pub bought: Measure,
    /// What the workroom's rule of thumb would buy.
    pub rule_of_thumb: Measure,
    /// What no layout can beat.
    pub at_least: Measure,
    /// What the bought length costs.
    pub cost: Option<Amount>,
    /// How much more is bought than of the cloth as it is; below zero for less.
    pub more_bought: Option<Measure>,
    /// How much more that costs; below zero for less.
    pub more_cost: Option<Amount>,
}

impl ClothComparison {
    /// All of it as JSON, laid out for people to compare; it ends in a newline.
    #[must_use]
    pub fn to_json(&self) -> String {
        let text = serde_json::to_string_pretty(self).unwrap_or_default();
        format!("{text}\n")
    }
}
