//! What is bought beside cloth.

use pelmet_model::NotionKind;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::{Amount, Measure};

/// A notion, all panels together.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct Notion {
    /// What it is for.
    pub kind: NotionKind,
    /// What it is called.
    pub name: String,
    /// Width of a strip.
    pub width: Option<Measure>,
    /// What each kind of panel needs of it.
    pub parts: Vec<NotionPart>,
    /// The sum of its parts.
    pub exact: Extent,
    /// What to buy: whole rolls or packs where these are known, otherwise lengths rounded up to the
    /// buying step.
    pub bought: Extent,
    /// Length of one roll, where it is known.
    pub roll: Option<Measure>,
    /// How many rolls, where the length of one is known.
    pub rolls: Option<u32>,
    /// How many are in a pack, where that is known.
    pub pack: Option<u32>,
    /// How many packs, where it is known how many are in one.
    pub packs: Option<u32>,
    /// Its price in words: `2.40 USD per yd`.
    pub price: Option<String>,
    /// What costs what is bought, where its price suits how it is bought.
    pub cost: Option<Amount>,
}

/// How much there is of something: so long, or so many.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct Extent {
    /// How long, where it is measured.
    pub length: Option<Measure>,
    /// How many, where it is counted.
    pub count: Option<u32>,
    /// Either, as printed.
    pub text: String,
}

/// What one kind of panel needs of a notion.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct NotionPart {
    /// The window it is for, by name.
    pub window: String,
    /// The kind of panel it is for, by name.
    pub panel: String,
    /// How many such panels are made.
    pub quantity: u32,
    /// For one panel.
    pub each: Extent,
    /// For all of them.
    pub together: Extent,
}

/// Strips of tape behind the folds of one panel.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct PleatStrips {
    /// How many.
    pub count: u32,
    /// How long each is: no longer than the shallowest pleat is deep, they stay hidden.
    pub length: Measure,
}
