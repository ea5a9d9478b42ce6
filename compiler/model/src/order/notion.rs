//! What is bought beside cloth, as a shop sells it.

use pelmet_measure::{Length, Mass, Ratio};

use crate::PriceOrder;

/// A notion: how it is sold, what it costs and what it weighs. A panel's tape, fastener, thread,
/// rings and weights find theirs by name.
#[derive(Clone, PartialEq, Debug)]
pub struct NotionOrder {
    /// The name the maker gave it.
    pub name: String,
    /// Length of one roll or reel; `None` where it is sold by length.
    pub roll: Option<Length>,
    /// How many are sold together; `None` where they are sold singly.
    pub pack: Option<u32>,
    /// What it costs.
    pub price: Option<NotionPrice>,
    /// What it weighs.
    pub weight: Option<NotionWeight>,
}

/// What a notion costs, in the job's currency.
#[derive(Clone, PartialEq, Debug)]
pub enum NotionPrice {
    /// So much for a yard, a metre or another length of it.
    PerLength(PriceOrder),
    /// For one.
    Each(Ratio),
    /// So much for one roll, whatever its length.
    PerRoll(Ratio),
    /// So much for one pack, however many are in it.
    PerPack(Ratio),
}

/// What a notion weighs.
#[derive(Copy, Clone, PartialEq, Debug)]
pub enum NotionWeight {
    /// What a certain length of it weighs.
    PerLength {
        /// So much.
        mass: Mass,
        /// For so long.
        per: Length,
    },
    /// One of it.
    Each(Mass),
}

impl NotionOrder {
    /// The notion of this name, where one is described.
    pub fn named<'a>(notions: &'a [Self], name: &str) -> Option<&'a Self> {
        notions.iter().find(|notion| notion.name == name)
    }
}

/// The name under which fusible tape is described.
pub const FUSIBLE_TAPE: &str = "fusible-tape";
