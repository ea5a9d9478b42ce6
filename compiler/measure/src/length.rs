//! Lengths, in whole nanometres.

use crate::Ratio;
use crate::exact::{nearest, nearest_quotient, ratio, saturated};
use crate::operators::saturating_operators;
use crate::text::{decimal_text, without_trailing_zeros};
use std::fmt;

/// A length: a whole number of nanometres, so that 1/64 in (396 875 nm) and 0.01 mm are both exact.
///
/// Operators saturate at the ends of `i64`. [`Length::LARGEST`] is checked where a length enters,
/// and is some 900 000 times smaller, so no sum of stated lengths gets there.
#[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub struct Length(i64);

impl Length {
    /// No length at all, where sums begin.
    pub const ZERO: Length = Length(0);
    /// The small metric unit: a millionth of this is the unit lengths are kept in.
    pub const MILLIMETRE: Length = Length(1_000_000);
    /// 1000 mm.
    pub const METRE: Length = Length(1_000_000_000);
    /// One inch: exactly 25.4 mm (NIST SP 811, appendix B.8).
    pub const INCH: Length = Length(25_400_000);
    /// 12 inches, exactly 304.8 mm.
    pub const FOOT: Length = Length(304_800_000);
    /// 36 inches, exactly 914.4 mm.
    pub const YARD: Length = Length(914_400_000);
    /// The largest length a design may state: 10 km.
    pub const LARGEST: Length = Length(10_000_000_000_000);

    /// A length told in nanometres, the unit it is kept in.
    #[must_use]
    pub const fn from_nanometres(nanometres: i64) -> Length {
        Length(nanometres)
    }

    /// How many nanometres it has: exact, as it is kept.
    #[must_use]
    pub const fn nanometres(self) -> i64 {
        self.0
    }

    /// So many whole inches, saturating.
    #[must_use]
    pub const fn inches(whole: i64) -> Length {
        Length(Length::INCH.0.saturating_mul(whole))
    }

    /// `numerator / denominator` of an inch, to the nearest nanometre, half away from zero,
    /// saturating. A denominator of zero gives [`Length::ZERO`].
    #[must_use]
    pub const fn inch_fraction(numerator: i64, denominator: i64) -> Length {
        let inch = Length::INCH.0 as i128;
        let nanometres = inch.saturating_mul(numerator as i128);
        Length(saturated(nearest_quotient(nanometres, denominator as i128)))
    }

    /// So many whole millimetres, saturating.
    #[must_use]
    pub const fn millimetres(whole: i64) -> Length {
        Length(Length::MILLIMETRE.0.saturating_mul(whole))
    }

    /// The length times an exact number, to the nearest nanometre, half away from zero, saturating.
    #[must_use]
    pub fn scaled(self, by: Ratio) -> Length {
        Length(saturated(nearest(self.0.into(), by)))
    }

    /// One of so many equal parts, rounded down to the nanometre; for no parts, the length itself.
    #[must_use]
    pub fn divided(self, parts: u32) -> Length {
        self.portion(1, parts.into())
    }

    /// `numerator / denominator` of the length, rounded down to the nanometre, saturating; for a
    /// denominator of zero, the length itself.
    #[must_use]
    pub fn portion(self, numerator: u64, denominator: u64) -> Length {
        i128::from(self.0)
            .saturating_mul(numerator.into())
            .checked_div_euclid(denominator.into())
            .map_or(self, |nanometres| Length(saturated(nanometres)))
    }

    /// How many times `other` goes into this length, exactly; `None` when `other` is zero.
    #[must_use]
    pub fn ratio_to(self, other: Length) -> Option<Ratio> {
        ratio(self.0.into(), other.0.into())
    }

    /// The smallest multiple of `step` that is not less; a step that is not positive changes nothing.
    #[must_use]
    #[inline]
    pub fn round_up_to(self, step: Length) -> Length {
        let down = self.round_down_to(step);
        if down == self {
            self
        } else {
            Length(down.0.saturating_add(step.0))
        }
    }

    /// The largest multiple of `step` that is not more; a step that is not positive changes nothing.
    #[must_use]
    #[inline]
    pub fn round_down_to(self, step: Length) -> Length {
        if !step.is_positive() {
            return self;
        }
        let beyond = self.0.checked_rem_euclid(step.0).unwrap_or(0);
        Length(self.0.saturating_sub(beyond))
    }

    /// The nearest multiple of `step`, half away from zero; a step that is not positive changes
    /// nothing.
    #[must_use]
    pub fn round_to(self, step: Length) -> Length {
        if !step.is_positive() {
            return self;
        }
        let steps = nearest_quotient(self.0.into(), step.0.into());
        Length(saturated(steps.saturating_mul(step.0.into())))
    }

    /// Whether the length is more than zero.
    #[must_use]
    pub const fn is_positive(self) -> bool {
        self.0 > 0
    }

    /// Whether the length is less than zero.
    #[must_use]
    pub const fn is_negative(self) -> bool {
        self.0 < 0
    }

    /// Whether nothing is left of it.
    #[must_use]
    pub const fn is_zero(self) -> bool {
        self.0 == 0
    }

    /// The length without its sign.
    #[must_use]
    pub const fn abs(self) -> Length {
        Length(self.0.saturating_abs())
    }

    /// The length in millimetres, for drawing and for curves only: it may be off in the last place.
    #[must_use]
    pub fn as_millimetres_f64(self) -> f64 {
        self.0 as f64 / NANOMETRES_IN_A_MILLIMETRE
    }

    /// A computed number of millimetres, to the nearest nanometre, half away from zero; `None` when
    /// it is not a number or larger than [`Length::LARGEST`]. The one place where a float becomes a
    /// length.
    #[must_use]
    #[expect(
        clippy::cast_possible_truncation,
        reason = "a whole number below the largest length"
    )]
    pub fn from_millimetres_f64(millimetres: f64) -> Option<Length> {
        let nanometres = (millimetres * NANOMETRES_IN_A_MILLIMETRE).round();
        let fits = nanometres.abs() <= Length::LARGEST.0 as f64;
        fits.then_some(Length(nanometres as i64))
    }

    /// The length in millimetres as an exact decimal without trailing zeros: `393.7`, `-3`,
    /// `0.396875`.
    #[must_use]
    pub fn millimetres_text(self) -> String {
        without_trailing_zeros(&decimal_text(self.0.into(), 6))
    }

    /// The length in metres as an exact decimal without trailing zeros.
    pub(crate) fn metres_text(self) -> String {
        without_trailing_zeros(&decimal_text(self.0.into(), 9))
    }
}

saturating_operators!(Length);

impl fmt::Debug for Length {
    fn fmt(&self, formatter: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(formatter, "{} mm", self.millimetres_text())
    }
}

const NANOMETRES_IN_A_MILLIMETRE: f64 = 1e6;
