//! Areas, in whole square nanometres.

use crate::exact::{nearest, nearest_quotient};
use crate::operators::saturating_operators;
use crate::text::{decimal_text, without_trailing_zeros};
use crate::{Length, Ratio};

/// An area: a whole number of square nanometres. Operators saturate at the ends of `i128`.
#[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Default, Debug)]
pub struct Area(i128);

impl Area {
    /// No area.
    pub const ZERO: Area = Area(0);

    /// The area of a rectangle; exact, because the product of any two lengths fits.
    #[must_use]
    pub fn of(width: Length, length: Length) -> Area {
        Area(i128::from(width.nanometres()).saturating_mul(length.nanometres().into()))
    }

    /// An area told in square nanometres, the unit it is kept in.
    #[must_use]
    pub const fn from_square_nanometres(square_nanometres: i128) -> Area {
        Area(square_nanometres)
    }

    /// The area times an exact number, to the nearest square nanometre, saturating.
    #[must_use]
    pub fn scaled(self, by: Ratio) -> Area {
        Area(nearest(self.0, by))
    }

    /// How many square nanometres it has: exact, as it is kept.
    #[must_use]
    pub const fn square_nanometres(self) -> i128 {
        self.0
    }

    /// The area in square metres, to the nearest thousandth, always with three decimals: `0.345`.
    #[must_use]
    pub fn square_metres_text(self) -> String {
        decimal_text(nearest_quotient(self.0, SQUARE_METRE / 1_000), 3)
    }

    /// The area in square inches, to the nearest tenth: `432`, `12.5`.
    #[must_use]
    pub fn square_inches_text(self) -> String {
        without_trailing_zeros(&decimal_text(nearest_quotient(self.0, SQUARE_INCH / 10), 1))
    }
}

saturating_operators!(Area);

/// In square nanometres: a metre is 10^9 of them.
const SQUARE_METRE: i128 = 1_000_000_000 * 1_000_000_000;
/// In square nanometres: an inch is exactly 25.4 mm (NIST SP 811, appendix B.8).
const SQUARE_INCH: i128 = 25_400_000 * 25_400_000;
