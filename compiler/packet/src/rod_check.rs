//! A rod under what hangs from it.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::{Measure, Weight};

/// What a rod makes of its treatment. All of it is an estimate: the ratings of rod, brackets and
/// anchors, and the wall, decide.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct RodCheck {
    /// What it is reckoned to be made of.
    pub material: Stiffness,
    /// How many brackets carry it, one at each end and the others at equal distances between them.
    pub brackets: u32,
    /// Whether that many were stated; otherwise they are assumed.
    pub brackets_stated: bool,
    /// From bracket to bracket.
    pub span: Measure,
    /// What the rod itself weighs.
    pub rod_weight: Weight,
    /// What it carries, itself included.
    pub load: Load,
    /// The bending moment in the middle of a span.
    pub bending: Bending,
    /// How far it sags in the middle of a span.
    pub sag: Measure,
    /// How far it may sag.
    pub sag_limit: Measure,
    /// Whether that was stated; otherwise it is the usual.
    pub sag_limit_stated: bool,
    /// The widest bracket spacing that stays within the limit.
    pub widest_spacing: Measure,
    /// How many brackets stay within it, where a sensible number does.
    pub brackets_enough: Option<u32>,
}

/// How stiff a material is taken to be.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct Stiffness {
    /// What it is called.
    pub name: String,
    /// The least of its modulus of elasticity, which is reckoned with, in millions of pounds a
    /// square inch.
    pub least_million_psi: f64,
    /// The most that is stated of it, in the same unit: the rod may be that much stiffer.
    pub most_million_psi: f64,
    /// Where these come from.
    pub source: String,
}

/// A load spread evenly.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct Load {
    /// For programs, in newtons a metre.
    pub newtons_per_metre: f64,
    /// As printed.
    pub text: String,
}

/// A bending moment.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct Bending {
    /// For programs, in newton metres.
    pub newton_metres: f64,
    /// As printed.
    pub text: String,
}
