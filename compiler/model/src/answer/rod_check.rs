//! A rod under what hangs from it.

use pelmet_measure::{Length, Mass};

use crate::Material;

/// A rod under its treatment.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct RodChecked {
    /// What it is reckoned to be made of.
    pub material: &'static Material,
    /// How many brackets carry it.
    pub brackets: u32,
    /// From bracket to bracket.
    pub span: Length,
    /// What the rod itself weighs.
    pub rod_weight: Mass,
    /// What it carries, itself included, in newtons a metre.
    pub newtons_per_metre: f64,
    /// The bending moment in the middle of a span, in newton metres.
    pub newton_metres: f64,
    /// How far it sags in the middle of a span.
    pub sag: Length,
    /// How far it may.
    pub limit: Length,
    /// The widest bracket spacing that stays within the limit.
    pub spacing: Length,
    /// How many brackets stay within it; `None` where that takes more than is sensible.
    pub brackets_enough: Option<u32>,
}

/// Why nothing can be said of a rod.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum RodUnknown {
    /// What hangs from it is not known.
    Weight,
    /// Its material is not stated, or is none that can be reckoned with.
    Material,
    /// It has one bracket, and no span.
    OneBracket,
}
