//! Lengths, areas and money as one house prints them.

use pelmet_measure::{Area, Length, Money, Quantity, Ratio, Style, number_text, ratio};
use pelmet_workroom::Price;

use crate::packet::{Amount, Measure, Place, Run, Surface, Times};

/// Puts amounts beside their text in the style of the house.
pub(crate) struct Printer<'a> {
    pub(crate) style: Style,
    pub(crate) currency: Option<&'a str>,
}

impl Printer<'_> {
    /// A length to cut: its text rounded up.
    pub(crate) fn cut(&self, length: Length) -> Measure {
        printed(length, self.style.cut(length))
    }

    /// A length to mark or to check: its text rounded to the nearest.
    pub(crate) fn mark(&self, length: Length) -> Measure {
        printed(length, self.style.mark(length))
    }

    /// A length as the maker stated it.
    pub(crate) fn plain(&self, length: Length) -> Measure {
        printed(length, self.style.plain(length))
    }

    /// A length of cloth that is bought already: its text in the unit it is bought in.
    pub(crate) fn bolt(&self, length: Length) -> Measure {
        printed(length, self.style.bolt(length))
    }

    /// A length as it is bought, number and text alike rounded up to the buying step.
    pub(crate) fn bought(&self, length: Length) -> Measure {
        self.bolt(length.round_up_to(self.style.buying_step()))
    }

    /// A lower bound: its text rounded down, since it must not claim more than it is.
    pub(crate) fn at_least(&self, length: Length) -> Measure {
        let down = length.round_down_to(self.style.cut_step);
        printed(length, self.style.cut(down))
    }

    /// A mark measured from the centre line, the side it lies on in words.
    pub(crate) fn beside_centre(&self, offset: Length) -> Measure {
        let distance = self.style.mark(offset.abs());
        let text = if distance == self.style.mark(Length::ZERO) {
            distance
        } else if offset.is_negative() {
            format!("{distance} left")
        } else {
            format!("{distance} right")
        };
        printed(offset, text)
    }

    pub(crate) fn run(&self, from: Length, to: Length) -> Run {
        Run {
            from: self.mark(from),
            to: self.mark(to),
        }
    }

    pub(crate) fn place(&self, across: Length, down: Length) -> Place {
        Place {
            across: self.mark(across),
            down: self.mark(down),
        }
    }

    pub(crate) fn surface(&self, area: Area) -> Surface {
        Surface {
            square_metres: square_metres(area),
            text: self.style.area(area),
        }
    }

    pub(crate) fn amount(&self, money: Money) -> Amount {
        let text = match self.currency {
            Some(currency) => format!("{} {currency}", money.text()),
            None => money.text(),
        };
        Amount {
            amount: units(money),
            text,
        }
    }
}

/// How often `part` goes into `whole`, printed to the hundredth; `None` when `part` is zero.
pub(crate) fn times(whole: Length, part: Length) -> Option<Times> {
    let number = whole.ratio_to(part)?;
    let text = format!("{} times", number_text(to_the_hundredth(number)?));
    Some(Times {
        times: quotient(number),
        text,
    })
}

/// What a length costs, to the hundredth; `None` for a price that buys no length.
pub(crate) fn cost(price: &Price, length: Length) -> Option<Money> {
    let lengths = Quantity::number(length.ratio_to(price.per)?);
    let cost = Quantity::number(price.amount).multiply(lengths).ok()?;
    Some(ONE_UNIT_OF_MONEY.scaled(cost.amount))
}

/// An amount of money, to the hundredth.
pub(crate) fn money(amount: Ratio) -> Money {
    ONE_UNIT_OF_MONEY.scaled(amount)
}

const ONE_UNIT_OF_MONEY: Money = Money::from_hundredths(100);
const SQUARE_NANOMETRES_IN_A_SQUARE_METRE: f64 = 1e18;

fn printed(length: Length, text: String) -> Measure {
    Measure {
        mm: length.as_millimetres_f64(),
        text,
    }
}

/// The nearest hundredth of a number that is not negative.
fn to_the_hundredth(number: Ratio) -> Option<Ratio> {
    let twice = number.denom().checked_mul(2)?;
    let hundredths = number
        .numer()
        .checked_mul(200)?
        .checked_add(*number.denom())?;
    ratio(hundredths.checked_div(twice)?, 100)
}

fn square_metres(area: Area) -> f64 {
    area.square_nanometres() as f64 / SQUARE_NANOMETRES_IN_A_SQUARE_METRE
}

fn units(money: Money) -> f64 {
    money.hundredths() as f64 / 100.0
}

fn quotient(number: Ratio) -> f64 {
    *number.numer() as f64 / *number.denom() as f64
}
