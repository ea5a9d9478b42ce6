//! Exact arithmetic that answers `None` where plain operators would panic.

use num_traits::{CheckedAdd, CheckedDiv, CheckedMul, CheckedSub};

/// An exact number: a whole numerator over a whole, positive denominator, in lowest terms.
///
/// Its plain operators panic on overflow; a [`crate::Quantity`] reports overflow instead.
pub type Ratio = num_rational::Ratio<i128>;

/// The exact number `numerator / denominator`; `None` when the denominator is zero or either
/// number is `i128::MIN`, whose opposite cannot be held.
#[must_use]
pub fn ratio(numerator: i128, denominator: i128) -> Option<Ratio> {
    let holdable = numerator != i128::MIN && denominator != i128::MIN && denominator != 0;
    holdable.then(|| Ratio::new(numerator, denominator))
}

pub(crate) fn add(left: Ratio, right: Ratio) -> Option<Ratio> {
    sound(sound(left)?.checked_add(&sound(right)?)?)
}

pub(crate) fn subtract(left: Ratio, right: Ratio) -> Option<Ratio> {
    sound(sound(left)?.checked_sub(&sound(right)?)?)
}

pub(crate) fn multiply(left: Ratio, right: Ratio) -> Option<Ratio> {
    sound(sound(left)?.checked_mul(&sound(right)?)?)
}

/// `left / right`, or `None` when `right` is zero or the result too large.
pub(crate) fn divide(left: Ratio, right: Ratio) -> Option<Ratio> {
    sound(sound(left)?.checked_div(&sound(right)?)?)
}

pub(crate) fn negate(value: Ratio) -> Option<Ratio> {
    let numerator = value.numer().checked_neg()?;
    ratio(numerator, *value.denom())
}

/// `value * by` to the nearest whole number, half away from zero, saturating.
///
/// Long multiplication, one bit of `value` at a time, because the plain product may need twice the
/// bits that a number has.
pub(crate) fn nearest(value: i128, by: Ratio) -> i128 {
    let denominator = by.denom().unsigned_abs();
    let factor = Parts::new(by.numer().unsigned_abs(), denominator);
    let magnitude = value.unsigned_abs();
    let product = (0..u128::BITS.saturating_sub(magnitude.leading_zeros()))
        .rev()
        .map(|bit| magnitude & (1 << bit) != 0)
        .fold(Parts::default(), |product, bit| {
            let doubled = product.plus(product, denominator);
            if bit {
                doubled.plus(factor, denominator)
            } else {
                doubled
            }
        });
    let rounded = product.rounded(denominator);
    signed(rounded, value.is_negative() != by.numer().is_negative())
}

/// `numerator / denominator` to the nearest whole number, half away from zero; zero when the
/// denominator is zero.
pub(crate) const fn nearest_quotient(numerator: i128, denominator: i128) -> i128 {
    let divisor = denominator.unsigned_abs();
    let raised = numerator.unsigned_abs().saturating_add(divisor / 2);
    match raised.checked_div(divisor) {
        Some(magnitude) => signed(
            magnitude,
            numerator.is_negative() != denominator.is_negative(),
        ),
        None => 0,
    }
}

/// The nearest number to `value` that an `i64` can hold.
#[expect(
    clippy::cast_possible_truncation,
    reason = "the last arm holds only what fits"
)]
pub(crate) const fn saturated(value: i128) -> i64 {
    match value {
        ..=SMALLEST => i64::MIN,
        LARGEST.. => i64::MAX,
        fits => fits as i64,
    }
}

const SMALLEST: i128 = i64::MIN as i128;
const LARGEST: i128 = i64::MAX as i128;

/// A number that is not negative, as a whole part and a count of `1 / denominator` below one whole.
#[derive(Copy, Clone, Default)]
struct Parts {
    whole: u128,
    rest: u128,
}

impl Parts {
    fn new(numerator: u128, denominator: u128) -> Parts {
        Parts {
            whole: numerator.checked_div(denominator).unwrap_or(0),
            rest: numerator.checked_rem(denominator).unwrap_or(0),
        }
    }

    /// The denominator came from an `i128`, so the sum of two rests fits.
    fn plus(self, other: Parts, denominator: u128) -> Parts {
        let whole = self.whole.saturating_add(other.whole);
        let rest = self.rest.saturating_add(other.rest);
        match rest.checked_sub(denominator) {
            Some(rest) => Parts {
                whole: whole.saturating_add(1),
                rest,
            },
            None => Parts { whole, rest },
        }
    }

    fn rounded(self, denominator: u128) -> u128 {
        let half_or_more = self.rest.saturating_mul(2) >= denominator;
        self.whole.saturating_add(u128::from(half_or_more))
    }
}

const fn signed(magnitude: u128, negative: bool) -> i128 {
    if negative {
        0_i128.saturating_sub_unsigned(magnitude)
    } else {
        0_i128.saturating_add_unsigned(magnitude)
    }
}

/// The value, if its sign can be turned and its denominator is a denominator.
fn sound(value: Ratio) -> Option<Ratio> {
    (*value.numer() != i128::MIN && *value.denom() > 0).then_some(value)
}

#[cfg(test)]
mod tests {
    use super::*;
    use num_traits::Zero;
    use proptest::prelude::*;

    #[test]
    fn edges_of_the_range_are_refused_not_reached() {
        let half_range = 1_i128 << 64;
        let negative = Ratio::from_integer(-(1_i128 << 63));
        assert_eq!(multiply(negative, Ratio::from_integer(half_range)), None);
        for sign in [1, -1] {
            assert_eq!(divide(negative, Ratio::new(sign, half_range)), None);
        }
        assert_eq!(
            add(Ratio::from_integer(i128::MAX), Ratio::from_integer(1)),
            None
        );
        assert_eq!(
            subtract(Ratio::from_integer(i128::MIN), Ratio::from_integer(0)),
            None
        );
        assert_eq!(negate(Ratio::from_integer(i128::MIN)), None);
        assert_eq!(divide(Ratio::from_integer(1), Ratio::zero()), None);
        assert_eq!(add(Ratio::new_raw(1, 0), Ratio::from_integer(1)), None);
    }

    #[test]
    fn a_ratio_needs_numbers_it_can_hold() {
        assert_eq!(ratio(6, -4), Some(Ratio::new(-3, 2)));
        assert_eq!(ratio(1, 0), None);
        assert_eq!(ratio(i128::MIN, 1), None);
        assert_eq!(ratio(1, i128::MIN), None);
    }

    #[test]
    fn nearest_rounds_halves_away_from_zero() {
        let cases = [
            (1, 1, 2, 1),
            (-1, 1, 2, -1),
            (1, 1, 3, 0),
            (2, 1, 3, 1),
            (5, -1, 2, -3),
        ];
        for (value, numerator, denominator, expected) in cases {
            assert_eq!(nearest(value, Ratio::new(numerator, denominator)), expected);
            assert_eq!(nearest_quotient(value * numerator, denominator), expected);
        }
    }

    #[test]
    fn nearest_is_exact_where_the_product_would_not_fit() {
        let almost_one = Ratio::new(i128::MAX - 1, i128::MAX);
        assert_eq!(
            nearest(i128::from(i64::MAX), almost_one),
            i128::from(i64::MAX)
        );
        let huge_third = Ratio::new(i128::MAX / 3, i128::MAX);
        assert_eq!(nearest(3_000_000_000, huge_third), 1_000_000_000);
    }

    #[test]
    fn nearest_saturates() {
        let huge = Ratio::from_integer(i128::MAX);
        assert_eq!(nearest(2, huge), i128::MAX);
        assert_eq!(nearest(-2, huge), i128::MIN);
        assert_eq!(saturated(i128::MAX), i64::MAX);
        assert_eq!(saturated(i128::MIN), i64::MIN);
        assert_eq!(saturated(-7), -7);
    }

    proptest! {
        #[test]
        fn both_roundings_agree(value: i64, numerator: i32, denominator in 1..i32::MAX) {
            let by = Ratio::new(numerator.into(), denominator.into());
            let product = i128::from(value).saturating_mul(numerator.into());
            prop_assert_eq!(nearest(value.into(), by), nearest_quotient(product, denominator.into()));
        }

        #[test]
        fn no_pair_of_numbers_panics(
            a in any::<i128>(), b in 1..i128::MAX, c in any::<i128>(), d in 1..i128::MAX,
        ) {
            let (left, right) = (Ratio::new(a, b), Ratio::new(c, d));
            for operation in [add, subtract, multiply, divide] {
                operation(left, right);
            }
            nearest(a, right);
            nearest_quotient(a, c);
            let _ = left.cmp(&right);
        }
    }
}
