//! Lengths, areas and money as one house prints them.

use pelmet_measure::{Area, Length, Mass, Money, Ratio, Style, number_text, ratio};

use pelmet_packet::{Amount, Measure, Place, Run, Surface, Times, Weight};

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

    /// The length of a roll: in the unit it is bought in where that says it exactly.
    pub(crate) fn roll(&self, length: Length) -> Measure {
        let bought = self.bought(length);
        if bought.mm > length.as_millimetres_f64() {
            self.plain(length)
        } else {
            bought
        }
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

    pub(crate) fn weight(&self, mass: Mass) -> Weight {
        Weight {
            grams: mass.micrograms() as f64 / MICROGRAMS_IN_A_GRAM,
            text: self.style.mass(mass),
        }
    }

    pub(crate) fn amount(&self, money: Money) -> Amount {
        let text = match self.currency {
            Some(sign) if !sign.chars().any(char::is_alphabetic) => {
                format!("{sign}{}", money.text())
            }
            Some(letters) => format!("{} {letters}", money.text()),
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

const MICROGRAMS_IN_A_GRAM: f64 = 1e6;
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

pub(crate) fn quotient(number: Ratio) -> f64 {
    *number.numer() as f64 / *number.denom() as f64
}

#[cfg(test)]
mod tests {
    use pelmet_measure::{Length, Money, Style};
    use proptest::prelude::*;

    use super::{Printer, times};

    const LARGEST: i64 = Length::LARGEST.nanometres();
    const INCHES: Printer<'_> = Printer {
        style: Style::INCHES,
        currency: None,
    };

    fn sixteenths(count: i64) -> Length {
        Length::inch_fraction(count, 16)
    }

    #[test]
    fn a_distance_from_the_centre_says_its_side() {
        for (offset, text) in [
            (sixteenths(0), "0 in"),
            (Length::from_nanometres(-1), "0 in"),
            (sixteenths(-48), "3 in left"),
            (sixteenths(8), "1/2 in right"),
        ] {
            let printed = INCHES.beside_centre(offset);
            assert_eq!(printed, super::printed(offset, text.to_owned()));
        }
    }

    #[test]
    fn each_kind_of_length_is_rounded_its_own_way() {
        let length = sixteenths(161) + Length::from_nanometres(1);
        assert_eq!(INCHES.cut(length).text, "10 1/8 in");
        assert_eq!(INCHES.mark(length).text, "10 1/16 in");
        assert_eq!(INCHES.at_least(length).text, "10 in");
        let bought = Length::YARD.portion(3, 8);
        assert_eq!(
            INCHES.bought(length),
            super::printed(bought, String::from("3/8 yd"))
        );
    }

    #[test]
    fn the_sign_of_a_currency_stands_before_its_letters_after() {
        for (currency, text) in [
            (None, "2.50"),
            (Some("$"), "$2.50"),
            (Some("USD"), "2.50 USD"),
        ] {
            let printer = Printer { currency, ..INCHES };
            assert_eq!(printer.amount(Money::from_hundredths(2_50)).text, text);
        }
    }

    #[test]
    fn fullness_is_printed_to_the_hundredth() {
        for (flat, finished, text) in [
            (25, 10, "2 1/2 times"),
            (20, 10, "2 times"),
            (5, 3, "1.67 times"),
            (11, 10, "1.1 times"),
        ] {
            let printed = times(sixteenths(flat), sixteenths(finished)).map(|of| of.text);
            assert_eq!(printed.as_deref(), Some(text));
        }
        assert_eq!(times(sixteenths(1), Length::ZERO), None);
    }

    proptest! {
        #[test]
        fn millimetres_in_json_are_exact_to_the_nanometre(
            nanometres in -LARGEST..=LARGEST,
        ) {
            let length = Length::from_nanometres(nanometres);
            let json = serde_json::to_value(INCHES.mark(length)).expect("a measure is plain data");
            prop_assert_eq!(exact_nanometres(&json["mm"].to_string()), Some(i128::from(nanometres)));
        }
    }

    /// The nanometres a decimal number of millimetres says, digit by digit.
    fn exact_nanometres(decimal: &str) -> Option<i128> {
        let (digits, power) = decimal.split_once('e').unwrap_or((decimal, "0"));
        let (whole, fraction) = digits.split_once('.').unwrap_or((digits, ""));
        let fraction = fraction.trim_end_matches('0');
        let all: i128 = format!("{whole}{fraction}").parse().ok()?;
        let power = power.parse::<i32>().ok()?.checked_add(6)?;
        let places = power.checked_sub(i32::try_from(fraction.len()).ok()?)?;
        all.checked_mul(10_i128.checked_pow(u32::try_from(places).ok()?)?)
    }
}
