//! A cloth of the job as it is laid out.

use pelmet_bolt::Layout;
use pelmet_measure::Length;
use pelmet_model::Railroad;

use super::cloth_to_lay::ClothToLay;

/// A cloth with its layout.
#[derive(Clone, PartialEq, Debug)]
pub struct LaidCloth {
    /// What was to be laid.
    pub to_lay: ClothToLay,
    /// How it lies.
    pub layout: Layout,
    /// The ways to lay it that were compared; none where there was no choice.
    pub ways: Vec<RailroadTried>,
}

/// One of the ways that were compared, and what it buys.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub struct RailroadTried {
    /// When pieces lie along the cloth.
    pub railroad: Railroad,
    /// What is bought.
    pub bought: Length,
}
