//! What changed from one packet to another, in the words of the workroom.
//!
//! Both packets are walked side by side as they are written in JSON, so that nothing a packet holds
//! can be forgotten. [`things`] says which lists hold things that have names and so are found again
//! wherever they stand, and [`fields`] how the rest is told. What prints the same is the same.

mod difference;
mod fields;
mod matched;
mod place;
mod printed;
mod renames;
mod report;
mod runs;
mod things;
mod together;
mod walk;

use pelmet_packet::{Packet, schema_of};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use renames::Renames;
pub use report::{CHANGES_FORMAT, ChangesReport, JobChanges};
use walk::Walk;

/// One thing that is not as it was.
#[derive(Clone, PartialEq, Eq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct Change {
    /// The part of the packet it belongs to.
    pub part: Part,
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
    /// Its name.
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
pub enum Part {
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

/// The schema of what `pelmet changes` writes for programs, in the form of [`pelmet_packet::schema`].
pub fn changes_schema() -> serde_json::Value {
    schema_of::<ChangesReport>()
}

/// Everything that changed from one packet to another, part by part.
///
/// A window, panel or cloth that only has another name is told as renamed; one that also differs
/// otherwise as gone and another come.
pub fn changes(before: &Packet, after: &Packet) -> Vec<Change> {
    // Nothing in a packet can fail to be written: its keys are fixed and its numbers finite.
    let values = [before, after].map(|packet| serde_json::to_value(packet).unwrap_or_default());
    let [before_value, after_value] = &values;
    let renames = Renames::between(before_value, after_value);
    let mut found = Walk::new(after, &renames).all(before_value, after_value);
    found.sort_by_key(|change| change.part);
    found
}
