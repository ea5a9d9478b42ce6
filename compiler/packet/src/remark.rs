//! What a packet says beside its numbers.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// Something that will probably disappoint.
#[derive(Clone, PartialEq, Eq, PartialOrd, Ord, Debug, Serialize, Deserialize, JsonSchema)]
pub struct Warning {
    /// The readable name of its kind.
    pub code: String,
    /// What is wrong.
    pub title: String,
    /// The sum that shows why, line by line.
    pub sum: Vec<String>,
    /// The reason for which the maker accepts it; nothing where it stands.
    pub accepted: Option<String>,
}

/// Something assumed where the design is silent.
#[derive(Clone, PartialEq, Eq, PartialOrd, Ord, Debug, Serialize, Deserialize, JsonSchema)]
pub struct Note {
    /// The readable name of its kind.
    pub code: String,
    /// What was assumed.
    pub title: String,
    /// The sum that goes with it, line by line.
    pub sum: Vec<String>,
}

/// Something the design expects of itself; a packet exists only when all of it is met.
#[derive(Clone, PartialEq, Eq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct ExpectationMet {
    /// As the maker wrote it.
    pub wording: String,
    /// What the answer is, as printed; several values where panels of one name differ.
    pub came_out: String,
}

/// What can hurt someone or spoil the work.
#[derive(Clone, PartialEq, Eq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct Caution {
    /// Its name, by which a making method asks for it: `hot-iron`.
    pub name: String,
    /// What can happen, and how it is kept from happening.
    pub text: String,
    /// The sheets it belongs to as a whole, beside the steps of the making order that name it.
    pub sheets: Vec<SheetKind>,
}

/// The sheets of a packet.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum SheetKind {
    /// How each window looks from the room.
    Elevation,
    /// What to buy and how to lay it out.
    Yardage,
    /// Tape and fasteners.
    Notions,
    /// What it costs and what is asked for it.
    Quote,
    /// The size and the cutting line of each piece.
    CutSheet,
    /// A label for each piece that is cut.
    Labels,
    /// Every mark of a panel, by its distance from the edges.
    MarkList,
    /// How each pleated panel lies once folded.
    FoldingChart,
    /// What to do, step by step.
    MakingOrder,
    /// What hangs on each rod, and what the rod makes of it.
    RodCheck,
    /// How rows and panels must come out, and what was expected, warned of and assumed.
    Checks,
}
