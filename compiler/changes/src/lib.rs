//! What changed from one packet to another, in the words of the workroom.
//!
//! Both packets are walked side by side as they are written in JSON, so that nothing a packet holds
//! can be forgotten. `things` says which lists hold things that have names and so are found again
//! wherever they stand, and `fields` how the rest is told. What prints the same is the same.

mod change;
mod compare;
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

use pelmet_packet::schema_of;

pub use change::{Change, ChangeKind, Named, PacketPart};
pub use compare::changes;
pub use report::{CHANGES_FORMAT, ChangesReport, JobChanges};

/// The schema of what `pelmet changes` writes for programs, in the form of [`pelmet_packet::schema`].
pub fn changes_schema() -> serde_json::Value {
    schema_of::<ChangesReport>()
}
