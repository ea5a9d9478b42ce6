//! What is bought beside cloth.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::Measure;

/// A tape or a fastener, all panels together.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct Notion {
    /// What it is.
    pub kind: NotionKind,
    /// What it is called.
    pub name: String,
    /// Width of the strip.
    pub width: Measure,
    /// What each kind of panel needs of it.
    pub parts: Vec<NotionPart>,
    /// The sum of its parts.
    pub exact: Measure,
    /// The length to buy: whole rolls where the length of a roll is known, otherwise rounded up to
    /// the buying step.
    pub bought: Measure,
    /// Length of one roll, where it is known.
    pub roll: Option<Measure>,
    /// How many rolls, where the length of one is known.
    pub rolls: Option<u32>,
}

/// The kinds of notion.
#[derive(
    Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Debug, Serialize, Deserialize, JsonSchema,
)]
#[serde(rename_all = "snake_case")]
pub enum NotionKind {
    /// Fusible tape.
    FusibleTape,
    /// A fastener along a heading.
    Fastener,
}

/// What one kind of panel needs of a notion.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct NotionPart {
    /// The window.
    pub window: String,
    /// The panel.
    pub panel: String,
    /// How many such panels are made.
    pub quantity: u32,
    /// For one panel.
    pub each: Measure,
    /// For all of them.
    pub together: Measure,
}
