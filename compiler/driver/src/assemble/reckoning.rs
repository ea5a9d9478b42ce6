//! How a cost comes about.

use pelmet_measure::{Money, Quantity, Ratio};

use super::printer::{money, quotient};
use pelmet_packet::Reckoned;

/// So much of something, and what one of it costs. Both stay exact until they are money.
pub(crate) struct Reckoning {
    pub(crate) quantity: Ratio,
    /// What the price is for one of.
    pub(crate) unit: String,
    pub(crate) price: Ratio,
}

impl Reckoning {
    /// So many of something.
    pub(crate) fn of_count(count: u32, unit: &str, price: Ratio) -> Self {
        Self {
            quantity: Ratio::from_integer(count.into()),
            unit: unit.to_owned(),
            price,
        }
    }

    /// Both multiplied, to the hundredth; `None` beyond what a number can hold.
    pub(crate) fn cost(&self) -> Option<Money> {
        let cost = Quantity::number(self.price).multiply(Quantity::number(self.quantity));
        cost.ok().map(|cost| money(cost.amount))
    }

    pub(crate) fn told(&self) -> Reckoned {
        Reckoned {
            quantity: quotient(self.quantity),
            unit: self.unit.clone(),
            price: quotient(self.price),
        }
    }
}
