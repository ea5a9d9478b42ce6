//! Money, in whole hundredths of the currency unit.

use crate::Ratio;
use crate::exact::{nearest, saturated};
use crate::operators::saturating_operators;
use crate::text::decimal_text;

/// An amount of money: a whole number of hundredths of whatever currency the design is priced in.
///
/// A price stays exact until it is an amount to pay, and is then rounded once, so that the lines of
/// a quote always add up to its total. Operators saturate at the ends of `i64`.
#[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Default, Debug)]
pub struct Money(i64);

impl Money {
    /// No money.
    pub const ZERO: Money = Money(0);

    /// The amount of so many hundredths of the currency unit.
    #[must_use]
    pub const fn from_hundredths(hundredths: i64) -> Money {
        Money(hundredths)
    }

    /// The amount in hundredths of the currency unit.
    #[must_use]
    pub const fn hundredths(self) -> i64 {
        self.0
    }

    /// The amount times an exact number, to the nearest hundredth, half away from zero, saturating.
    #[must_use]
    pub fn scaled(self, by: Ratio) -> Money {
        Money(saturated(nearest(self.0.into(), by)))
    }

    /// The amount with its two decimals and no sign of the currency: `32.00`, `-1.50`.
    #[must_use]
    pub fn text(self) -> String {
        decimal_text(self.0.into(), 2)
    }
}

saturating_operators!(Money);
