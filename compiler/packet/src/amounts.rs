//! Amounts as a packet carries them: a number for programs beside the text for people.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// A length: exact decimal millimetres, and the text a person reads.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct Measure {
    /// Millimetres, exact to the nanometre.
    pub mm: f64,
    /// As printed, rounded to the style's step: cuts up, everything else to the nearest.
    pub text: String,
}

/// A width and a length.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct Size {
    /// Across.
    pub width: Measure,
    /// Down, or along the bolt.
    pub length: Measure,
}

/// A place on cloth, measured from two straight edges.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct Place {
    /// From the left edge, or from the fold where the piece is cut on the fold.
    pub across: Measure,
    /// From the top edge.
    pub down: Measure,
}

/// A run from one position to another.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct Run {
    /// Where it starts.
    pub from: Measure,
    /// Where it ends.
    pub to: Measure,
}

/// An area.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct Surface {
    /// For programs, in square metres.
    pub square_metres: f64,
    /// As printed.
    pub text: String,
}

/// A weight, estimated from areas and what cloth and notions are stated to weigh.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct Weight {
    /// For programs, in grams.
    pub grams: f64,
    /// As printed.
    pub text: String,
}

/// An amount of money.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct Amount {
    /// Units of the job's currency, to the hundredth.
    pub amount: f64,
    /// As printed, with the currency where the job names one.
    pub text: String,
}

/// How many times one thing goes into another.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct Times {
    /// The number.
    pub times: f64,
    /// As printed.
    pub text: String,
}
