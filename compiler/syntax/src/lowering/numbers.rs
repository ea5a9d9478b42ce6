//! Numbers in all the ways people write them.

use num_traits::{CheckedAdd, CheckedMul, Zero};
use pelmet_diagnostics::{Span, codes};
use pelmet_measure::{Ratio, Unit, ratio};
use pest::iterators::Pair;

use super::Lowering;
use crate::MAXIMUM_DIGITS;
use crate::fractions;
use crate::grammar::Rule;
use crate::tree::{Number, TermKind};

const INCHES_IN_A_FOOT: i128 = 12;
const INCHES_IN_A_YARD: i128 = 36;

/// Why an amount cannot be had.
enum NumberFinding {
    TooLarge,
    OverZero,
    /// Several groups of digits parted by commas: a point, or thousands?
    Commas,
}

impl Lowering<'_, '_> {
    pub(super) fn number(&mut self, pair: Pair<'_, Rule>) -> TermKind {
        let span = self.place(&pair);
        match self.read_number(pair) {
            Ok(number) => TermKind::Number(number),
            Err(finding) => {
                self.tell(&finding, span);
                TermKind::Broken(Vec::new())
            }
        }
    }

    fn tell(&mut self, finding: &NumberFinding, number: Span) {
        match finding {
            NumberFinding::TooLarge => self.diagnostics.push(codes::number_too_large(number)),
            NumberFinding::OverZero => self.diagnostics.push(codes::fraction_over_zero(number)),
            NumberFinding::Commas => self.tell_not_understood(number),
        }
    }

    /// Of two amounts the first counts feet or yards and the second inches.
    fn read_number(&mut self, pair: Pair<'_, Rule>) -> Result<Number, NumberFinding> {
        let mut number = Number {
            amount: Ratio::zero(),
            unit: None,
        };
        for part in pair.into_inner() {
            if part.as_rule() == Rule::amount {
                let inches = match number.unit {
                    Some((Unit::Yard, _)) => INCHES_IN_A_YARD,
                    _ => INCHES_IN_A_FOOT,
                };
                let whole = scaled(number.amount, inches)?;
                let place = self.place(&part);
                number.amount = sum(whole, self.amount(part, place)?)?;
            } else {
                let place = self.place(&part);
                number.unit = Unit::from_word(part.as_str()).map(|unit| (unit, place));
            }
        }
        Ok(number)
    }

    fn amount(&mut self, pair: Pair<'_, Rule>, place: Span) -> Result<Ratio, NumberFinding> {
        let typed = pair.as_str();
        pair.into_inner()
            .try_fold(Ratio::zero(), |amount, part| match part.as_rule() {
                Rule::lower => over(amount, &part),
                Rule::comma_decimals => {
                    let decimals = decimals(part)?;
                    self.diagnostics.push(codes::decimal_comma(place, typed));
                    sum(amount, decimals)
                }
                _ => sum(amount, amount_part(part)?),
            })
    }
}

/// What one part adds to an amount.
fn amount_part(pair: Pair<'_, Rule>) -> Result<Ratio, NumberFinding> {
    match pair.as_rule() {
        Rule::digits => whole(pair.as_str()),
        Rule::decimals => decimals(pair),
        Rule::fraction => fraction(pair),
        _ => glyph(&pair),
    }
}

/// The part of a number behind its point or comma: `.25`, or `,25`; of several groups nobody can tell
/// which is meant.
fn decimals(pair: Pair<'_, Rule>) -> Result<Ratio, NumberFinding> {
    let mut groups = pair.into_inner();
    match (groups.next(), groups.next()) {
        (Some(digits), None) => decimal_part(digits.as_str()),
        _ => Err(NumberFinding::Commas),
    }
}

fn decimal_part(digits: &str) -> Result<Ratio, NumberFinding> {
    let places = u32::try_from(digits.len()).map_err(|_| NumberFinding::TooLarge)?;
    let parts = 10_i128.checked_pow(places).ok_or(NumberFinding::TooLarge)?;
    ratio(count(digits)?, parts).ok_or(NumberFinding::TooLarge)
}

/// A fraction in two numbers or in one letter: `1/2` or `½`.
fn fraction(pair: Pair<'_, Rule>) -> Result<Ratio, NumberFinding> {
    pair.into_inner()
        .enumerate()
        .try_fold(Ratio::zero(), |upper, (index, part)| match part.as_rule() {
            Rule::digits if index == 0 => whole(part.as_str()),
            Rule::digits => divided(upper, part.as_str()),
            _ => glyph(&part),
        })
}

/// An amount so far, divided by the number below its line.
fn over(upper: Ratio, lower: &Pair<'_, Rule>) -> Result<Ratio, NumberFinding> {
    match lower.clone().into_inner().next() {
        Some(digits) => divided(upper, digits.as_str()),
        None => Err(NumberFinding::OverZero),
    }
}

fn divided(upper: Ratio, lower: &str) -> Result<Ratio, NumberFinding> {
    let lower = count(lower)?;
    let part = ratio(1, lower).ok_or(NumberFinding::OverZero)?;
    upper.checked_mul(&part).ok_or(NumberFinding::TooLarge)
}

fn glyph(pair: &Pair<'_, Rule>) -> Result<Ratio, NumberFinding> {
    fractions::value_of_text(pair.as_str())
        .and_then(|(upper, lower)| ratio(upper, lower))
        .ok_or(NumberFinding::OverZero)
}

fn whole(digits: &str) -> Result<Ratio, NumberFinding> {
    count(digits).map(Ratio::from_integer)
}

fn count(digits: &str) -> Result<i128, NumberFinding> {
    let small = digits.len() <= MAXIMUM_DIGITS;
    small
        .then(|| digits.parse().ok())
        .flatten()
        .ok_or(NumberFinding::TooLarge)
}

fn sum(left: Ratio, right: Ratio) -> Result<Ratio, NumberFinding> {
    left.checked_add(&right).ok_or(NumberFinding::TooLarge)
}

fn scaled(amount: Ratio, by: i128) -> Result<Ratio, NumberFinding> {
    amount
        .checked_mul(&Ratio::from_integer(by))
        .ok_or(NumberFinding::TooLarge)
}
