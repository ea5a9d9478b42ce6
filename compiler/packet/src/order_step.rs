//! A step of the making order.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// One thing to do, for one panel.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct OrderStep {
    /// Its number from 1.
    pub number: u32,
    /// What is done, in a word; the same as in `work`, where its time is stated.
    pub name: String,
    /// What to do, with the figures of this panel. What is said for each pleat, join or length of
    /// tape stands by itself.
    pub words: Vec<String>,
    /// What to take care of, each the name of one of the packet's cautions.
    pub cautions: Vec<String>,
    /// How long it takes, where the making method says so.
    pub time: Option<WorkTime>,
}

/// How long some work takes.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct WorkTime {
    /// For programs, in minutes.
    pub minutes: f64,
    /// As printed.
    pub text: String,
}
