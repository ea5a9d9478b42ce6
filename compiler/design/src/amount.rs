//! The value of an expression: a quantity, and a part of a width that is not known yet.

use num_traits::{CheckedAdd, CheckedMul, CheckedSub, Zero};
use pelmet_measure::{Dimension, Quantity, QuantityFinding, Ratio};
use pelmet_syntax::tree::Operator;

/// A quantity, plus a part of the width of the panel an outline will be drawn for.
///
/// Outlines are drawn in proportion to a width that the row settles later, so within them a sum
/// such as `width * 2/5 + 1 in` stays open: 2/5 of the width, plus 1 in. Everywhere else the part
/// is zero.
#[derive(Copy, Clone, PartialEq, Debug)]
pub(crate) struct Amount {
    /// What does not follow the width.
    pub fixed: Quantity,
    /// The part of the width that is added.
    pub of_width: Ratio,
}

/// Why two amounts cannot be reckoned together.
#[derive(Clone, PartialEq, Debug)]
pub(crate) enum AmountFinding {
    /// The quantities do not go together, or the result is out of reach.
    Quantity(QuantityFinding),
    /// A width that is not known yet can only be added to and multiplied by plain numbers.
    NotInProportion,
}

impl From<QuantityFinding> for AmountFinding {
    fn from(finding: QuantityFinding) -> Self {
        Self::Quantity(finding)
    }
}

impl Amount {
    /// A quantity that does not follow the width.
    pub fn fixed(quantity: Quantity) -> Self {
        Self {
            fixed: quantity,
            of_width: Ratio::zero(),
        }
    }

    /// The width itself.
    pub fn width() -> Self {
        let nothing = Quantity {
            amount: Ratio::zero(),
            dimension: Dimension::LENGTH,
        };
        Self {
            fixed: nothing,
            of_width: Ratio::new_raw(1, 1),
        }
    }

    /// Whether it is the same for every width.
    pub fn is_fixed(&self) -> bool {
        self.of_width.is_zero()
    }

    /// The amount with its sign turned.
    pub fn negated(self) -> Result<Self, AmountFinding> {
        let fixed = self.fixed.negate()?;
        let of_width = too_large(Ratio::zero().checked_sub(&self.of_width))?;
        Ok(Self { fixed, of_width })
    }

    /// This amount and another, reckoned together.
    pub fn reckon(self, operator: Operator, other: Self) -> Result<Self, AmountFinding> {
        match operator {
            Operator::Add => Ok(Self {
                fixed: self.fixed.add(other.fixed)?,
                of_width: too_large(self.of_width.checked_add(&other.of_width))?,
            }),
            Operator::Subtract => Ok(Self {
                fixed: self.fixed.subtract(other.fixed)?,
                of_width: too_large(self.of_width.checked_sub(&other.of_width))?,
            }),
            Operator::Multiply if self.is_fixed() => other.times(self.fixed),
            Operator::Multiply if other.is_fixed() => self.times(other.fixed),
            Operator::Divide if other.is_fixed() => {
                let one = Quantity::number(Ratio::new_raw(1, 1));
                self.times(one.divide(other.fixed)?)
            }
            Operator::Multiply | Operator::Divide => Err(AmountFinding::NotInProportion),
        }
    }

    fn times(self, factor: Quantity) -> Result<Self, AmountFinding> {
        let fixed = self.fixed.multiply(factor)?;
        if self.is_fixed() {
            return Ok(Self::fixed(fixed));
        }
        let number = factor
            .as_ratio()
            .map_err(|_| AmountFinding::NotInProportion)?;
        let of_width = too_large(self.of_width.checked_mul(&number))?;
        Ok(Self { fixed, of_width })
    }
}

fn too_large(part: Option<Ratio>) -> Result<Ratio, AmountFinding> {
    part.ok_or(AmountFinding::Quantity(QuantityFinding::TooLarge))
}

#[cfg(test)]
mod tests {
    use super::*;
    use pelmet_measure::Length;

    fn number(numerator: i128, denominator: i128) -> Amount {
        Amount::fixed(Quantity::number(Ratio::new(numerator, denominator)))
    }

    fn inches(whole: i64) -> Amount {
        Amount::fixed(Quantity::length(Length::inches(whole)))
    }

    #[test]
    fn a_part_of_the_width_stays_open() {
        let part = Amount::width()
            .reckon(Operator::Multiply, number(2, 5))
            .unwrap();
        let sum = part.reckon(Operator::Add, inches(1)).unwrap();
        assert_eq!(sum.of_width, Ratio::new(2, 5));
        assert_eq!(sum.fixed, Quantity::length(Length::inches(1)));
    }

    #[test]
    fn half_the_width_can_be_written_either_way() {
        let halved = Amount::width()
            .reckon(Operator::Divide, number(2, 1))
            .unwrap();
        let times = number(1, 2)
            .reckon(Operator::Multiply, Amount::width())
            .unwrap();
        assert_eq!(halved, times);
    }

    #[test]
    fn a_width_is_not_multiplied_by_a_length() {
        for (operator, left, right) in [
            (Operator::Multiply, Amount::width(), inches(2)),
            (Operator::Multiply, Amount::width(), Amount::width()),
            (Operator::Divide, inches(2), Amount::width()),
        ] {
            assert!(left.reckon(operator, right).is_err());
        }
    }
}
