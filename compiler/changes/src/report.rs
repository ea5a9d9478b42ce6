//! What changed in several jobs, for programs.

use pelmet_packet::Packet;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::change::Change;
use crate::compare::changes;

/// The version of the form of a [`ChangesReport`], the value of [`ChangesReport::format`].
pub const CHANGES_FORMAT: &str = "pelmet-changes/1";

/// What changed in every job that two versions hold.
#[derive(Clone, PartialEq, Eq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct ChangesReport {
    /// The form of this report and its version: `pelmet-changes/1`.
    #[schemars(extend("const" = CHANGES_FORMAT))]
    pub format: String,
    /// Every job, by name.
    pub jobs: Vec<JobChanges>,
}

/// Two versions of a job, side by side.
#[derive(Clone, PartialEq, Eq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct JobChanges {
    /// Its name: that of its file, where folders are compared.
    pub name: String,
    /// Its title before; nothing where it was not there.
    pub before: Option<String>,
    /// Its title after; nothing where it is gone.
    pub after: Option<String>,
    /// Everything that changed, where it is in both versions.
    pub changes: Vec<Change>,
}

impl JobChanges {
    /// Compares two versions of a job; either may be missing.
    pub fn between(name: &str, before: Option<&Packet>, after: Option<&Packet>) -> JobChanges {
        let title = |packet: Option<&Packet>| packet.map(|packet| packet.title.clone());
        JobChanges {
            name: name.to_owned(),
            before: title(before),
            after: title(after),
            changes: before
                .zip(after)
                .map(|(before, after)| changes(before, after))
                .unwrap_or_default(),
        }
    }

    /// Whether anything in it is not as it was.
    pub fn is_changed(&self) -> bool {
        !self.changes.is_empty() || self.before.is_some() != self.after.is_some()
    }
}

impl ChangesReport {
    /// The report of some jobs.
    pub fn of(jobs: Vec<JobChanges>) -> ChangesReport {
        ChangesReport {
            format: CHANGES_FORMAT.to_owned(),
            jobs,
        }
    }

    /// The whole report as JSON; it ends in a newline.
    pub fn to_json(&self) -> String {
        // Nothing in it can fail to be written: its keys are fixed.
        let json = serde_json::to_string_pretty(self).unwrap_or_default();
        format!("{json}\n")
    }
}
