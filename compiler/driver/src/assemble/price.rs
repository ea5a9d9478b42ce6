//! What things cost, and their prices in words.

use pelmet_measure::{Length, Money, Quantity, Ratio};
use pelmet_model::PriceOrder;
use pelmet_packet::{Measure, Price, Reckoned};

use super::printer::{Printer, quotient};

/// What a length costs, to the hundredth; `None` for a price that buys no length.
pub(crate) fn cost(price: &PriceOrder, length: Length) -> Option<Money> {
    cost_of(length.ratio_to(price.per)?, price.amount)
}

/// So much at so much for one of it, rounded once; `None` beyond what a number can hold.
fn cost_of(quantity: Ratio, price: Ratio) -> Option<Money> {
    let cost = Quantity::number(price).multiply(Quantity::number(quantity));
    cost.ok().map(|cost| money(cost.amount))
}

/// An amount of money, to the hundredth.
pub(crate) fn money(amount: Ratio) -> Money {
    ONE_UNIT_OF_MONEY.scaled(amount)
}

const ONE_UNIT_OF_MONEY: Money = Money::from_hundredths(100);

/// A price for a length, in words too.
pub(super) fn price(stated: &PriceOrder, printer: &Printer<'_>) -> Price {
    let amount = printer.amount(money(stated.amount));
    let per = per(stated.per, printer);
    let text = format!("{} per {}", amount.text, per.text.trim_start_matches("1 "));
    Price { amount, per, text }
}

/// How what a length costs comes about; `None` for a price that buys no length.
pub(super) fn reckoning(
    price: &PriceOrder,
    length: Length,
    printer: &Printer<'_>,
) -> Option<Reckoning> {
    let per = per(price.per, printer);
    Some(Reckoning {
        quantity: length.ratio_to(price.per)?,
        unit: per.text.trim_start_matches("1 ").to_owned(),
        price: price.amount,
    })
}

/// The length a price buys; a yard and a metre keep their names in either system of units.
fn per(length: Length, printer: &Printer<'_>) -> Measure {
    let named = |text: &str| Measure {
        text: text.to_owned(),
        ..printer.plain(length)
    };
    match length {
        Length::YARD => named("1 yd"),
        Length::METRE => named("1 m"),
        other => printer.plain(other),
    }
}

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
        cost_of(self.quantity, self.price)
    }

    pub(crate) fn told(&self) -> Reckoned {
        Reckoned {
            quantity: quotient(self.quantity),
            unit: self.unit.clone(),
            price: quotient(self.price),
        }
    }
}

#[cfg(test)]
mod tests {
    use pelmet_measure::{Length, Money, Ratio};
    use pelmet_model::PriceOrder;

    use super::cost;

    #[test]
    fn a_cost_is_rounded_once() {
        let price = PriceOrder {
            amount: Ratio::new(29, 2),
            per: Length::YARD,
        };
        for (length, hundredths) in [
            (Length::YARD, 14_50),
            (Length::YARD.divided(8), 1_81),
            (Length::YARD * 3, 43_50),
            (Length::ZERO, 0),
        ] {
            assert_eq!(
                cost(&price, length),
                Some(Money::from_hundredths(hundredths))
            );
        }
        assert_eq!(
            cost(
                &PriceOrder {
                    amount: Ratio::new(1, 1),
                    per: Length::ZERO
                },
                Length::YARD
            ),
            None
        );
    }
}
