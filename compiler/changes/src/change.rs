//! One thing that changed, and where it belongs.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// One thing that is not as it was.
#[derive(Clone, PartialEq, Eq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct Change {
    /// The part of the packet it belongs to.
    pub part: PacketPart,
    /// Whether something came, went or became another.
    pub kind: ChangeKind,
    /// What it is a part of, from the outside in: window, panel, piece. Names are those of the
    /// version after, where there is one.
    pub of: Vec<Named>,
    /// What it is, in words: `cut width`.
    pub what: String,
    /// What it was, as printed; nothing where it was not there, or where too much changed to be told.
    pub before: Option<String>,
    /// What it is now, as printed; nothing where it is gone, or where too much changed to be told.
    pub after: Option<String>,
    /// How much more or less it is, of a length or of money.
    pub difference: Option<String>,
}

/// Something that has a name.
#[derive(Clone, PartialEq, Eq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct Named {
    /// What it is: `window`, `panel`, `piece`, `cloth`.
    pub called: String,
    /// What the maker called it.
    pub name: String,
}

/// Whether something came, went or became another.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum ChangeKind {
    /// It was not there.
    Added,
    /// It is gone.
    Removed,
    /// It is there before and after, and differs.
    Changed,
}

/// The parts of a packet that changes are told by, in the order they are told.
#[derive(
    Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Debug, Serialize, Deserialize, JsonSchema,
)]
#[serde(rename_all = "snake_case")]
pub enum PacketPart {
    /// The job as a whole, and how it is written.
    Job,
    /// Cloth and notions to buy.
    Buying,
    /// What it costs to make.
    Quote,
    /// Windows, their rods or boards, and their rows.
    Windows,
    /// Panels and their sizes.
    Panels,
    /// What is cut.
    Pieces,
    /// What is marked.
    Marks,
    /// Pleats, and how a panel lies once they are laid.
    Folding,
    /// What is done, step by step.
    Making,
    /// What rods make of what hangs from them.
    Rods,
    /// What will disappoint, what was assumed, what is expected, and what to take care of.
    Checks,
}
