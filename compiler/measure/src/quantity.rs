//! Exact quantities with their dimension: what an expression is worth.

use crate::exact::{add, divide, multiply, nearest, negate, saturated, subtract};
use crate::{Dimension, Length, Mass, MassPerArea, Ratio, Unit};
use num_traits::{ToPrimitive, Zero};
use std::cmp::Ordering;
use thiserror::Error;

/// An exact quantity with its dimension.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub struct Quantity {
    /// How much, in base units: nanometres, micrograms, currency units and degrees.
    pub amount: Ratio,
    /// Which powers of length, mass, money and angle these units have.
    pub dimension: Dimension,
}

/// Why a sum has no answer.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Error)]
pub enum QuantityFinding {
    /// Two things that do not go together: the two sides of a sum, or what was found and what was
    /// needed.
    #[error("{} does not go with {}", .left.in_words(), .right.in_words())]
    Mismatch {
        /// The left side, or what was found.
        left: Dimension,
        /// The right side, or what was needed.
        right: Dimension,
    },
    /// The answer is larger than any design needs, or finer than can be held.
    #[error("this is more than can be reckoned with")]
    TooLarge,
    /// Something is divided by nothing, of whatever dimension.
    #[error("nothing can be divided by zero")]
    DividedByZero,
}

impl Quantity {
    /// A number without a unit: a count, a ratio, or a percentage as a part of one.
    #[must_use]
    pub const fn number(amount: Ratio) -> Quantity {
        Quantity {
            amount,
            dimension: Dimension::NUMBER,
        }
    }

    /// An amount of money, in currency units.
    #[must_use]
    pub const fn money(amount: Ratio) -> Quantity {
        Quantity {
            amount,
            dimension: Dimension::MONEY,
        }
    }

    /// A length as an exact quantity, to reckon with others.
    #[must_use]
    pub fn length(length: Length) -> Quantity {
        let amount = Ratio::from_integer(length.nanometres().into());
        Quantity {
            amount,
            dimension: Dimension::LENGTH,
        }
    }

    /// So many of a unit.
    ///
    /// # Errors
    /// `TooLarge` when it overflows.
    pub fn of(amount: Ratio, unit: Unit) -> Result<Quantity, QuantityFinding> {
        let amount = multiply(amount, unit.size()).ok_or(QuantityFinding::TooLarge)?;
        Ok(Quantity {
            amount,
            dimension: unit.dimension(),
        })
    }

    /// The sum.
    ///
    /// # Errors
    /// `Mismatch` when the two measure different things; `TooLarge` when it overflows.
    #[expect(
        clippy::should_implement_trait,
        reason = "the operator cannot give a finding"
    )]
    pub fn add(self, other: Quantity) -> Result<Quantity, QuantityFinding> {
        self.require(other.dimension)?;
        self.with(add(self.amount, other.amount), Some(self.dimension))
    }

    /// The difference.
    ///
    /// # Errors
    /// `Mismatch` when the two measure different things; `TooLarge` when it overflows.
    pub fn subtract(self, other: Quantity) -> Result<Quantity, QuantityFinding> {
        self.require(other.dimension)?;
        self.with(subtract(self.amount, other.amount), Some(self.dimension))
    }

    /// The product.
    ///
    /// # Errors
    /// `TooLarge` when it overflows.
    pub fn multiply(self, other: Quantity) -> Result<Quantity, QuantityFinding> {
        let dimension = self.dimension.times(other.dimension);
        self.with(multiply(self.amount, other.amount), dimension)
    }

    /// The quotient.
    ///
    /// # Errors
    /// `DividedByZero`, or `TooLarge` when it overflows.
    pub fn divide(self, other: Quantity) -> Result<Quantity, QuantityFinding> {
        if other.amount.is_zero() {
            return Err(QuantityFinding::DividedByZero);
        }
        let dimension = self.dimension.over(other.dimension);
        self.with(divide(self.amount, other.amount), dimension)
    }

    /// The opposite.
    ///
    /// # Errors
    /// `TooLarge` for the one number whose opposite cannot be held.
    pub fn negate(self) -> Result<Quantity, QuantityFinding> {
        self.with(negate(self.amount), Some(self.dimension))
    }

    /// Which of the two is more.
    ///
    /// # Errors
    /// `Mismatch` when the two measure different things.
    pub fn compare(self, other: Quantity) -> Result<Ordering, QuantityFinding> {
        self.require(other.dimension)?;
        Ok(self.amount.cmp(&other.amount))
    }

    /// The quantity as a length, to the nearest nanometre.
    ///
    /// # Errors
    /// `Mismatch` when it is no length; `TooLarge` beyond [`Length::LARGEST`].
    pub fn as_length(self) -> Result<Length, QuantityFinding> {
        self.whole(1, Dimension::LENGTH, Length::LARGEST.nanometres())
            .map(Length::from_nanometres)
    }

    /// The quantity as a mass, to the nearest microgram.
    ///
    /// # Errors
    /// `Mismatch` when it is no mass; `TooLarge` beyond [`Mass::LARGEST`].
    pub fn as_mass(self) -> Result<Mass, QuantityFinding> {
        self.whole(1, Dimension::MASS, Mass::LARGEST.micrograms())
            .map(Mass::from_micrograms)
    }

    /// The quantity as the weight of a cloth for its area.
    ///
    /// # Errors
    /// `Mismatch` when it is none; `TooLarge` beyond
    /// [`MassPerArea::LARGEST_IN_GRAMS_PER_SQUARE_METRE`].
    pub fn as_mass_per_area(self) -> Result<MassPerArea, QuantityFinding> {
        let largest = Ratio::from_integer(MassPerArea::LARGEST_IN_GRAMS_PER_SQUARE_METRE);
        self.at_most(Quantity::of(largest, Unit::GramPerSquareMetre)?)
            .map(MassPerArea::from_base_units)
    }

    /// The quantity as a plain number.
    ///
    /// # Errors
    /// `Mismatch` when it is no plain number.
    pub fn as_ratio(self) -> Result<Ratio, QuantityFinding> {
        self.require(Dimension::NUMBER).map(|()| self.amount)
    }

    /// The quantity as a count; `None` unless it is a plain number, whole, not negative, and a `u32`
    /// can hold it.
    #[must_use]
    pub fn as_count(self) -> Option<u32> {
        let number = self.as_ratio().ok()?;
        number.is_integer().then(|| number.numer().to_u32())?
    }

    fn with(
        self,
        amount: Option<Ratio>,
        dimension: Option<Dimension>,
    ) -> Result<Quantity, QuantityFinding> {
        amount
            .zip(dimension)
            .map(|(amount, dimension)| Quantity { amount, dimension })
            .ok_or(QuantityFinding::TooLarge)
    }

    fn require(self, needed: Dimension) -> Result<(), QuantityFinding> {
        if self.dimension == needed {
            return Ok(());
        }
        Err(QuantityFinding::Mismatch {
            left: self.dimension,
            right: needed,
        })
    }

    /// The amount times `parts`, as a whole number.
    fn whole(self, parts: i128, needed: Dimension, largest: i64) -> Result<i64, QuantityFinding> {
        self.require(needed)?;
        let whole = saturated(nearest(parts, self.amount));
        if whole.unsigned_abs() > largest.unsigned_abs() {
            return Err(QuantityFinding::TooLarge);
        }
        Ok(whole)
    }

    /// The amount, if its size is within that of a quantity that measures the same.
    fn at_most(self, largest: Quantity) -> Result<Ratio, QuantityFinding> {
        self.require(largest.dimension)?;
        let size = self.amount.max(self.negate()?.amount);
        if size > largest.amount {
            return Err(QuantityFinding::TooLarge);
        }
        Ok(self.amount)
    }
}
