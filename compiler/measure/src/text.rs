//! Numbers as people read them.

use crate::Ratio;
use crate::exact::nearest;

/// A plain number as people read it: `3`, `2 1/2`, `2 1/3`, `0.37`; `about 3.142` when neither a
/// short fraction nor a short decimal says it exactly.
#[must_use]
pub fn number_text(value: Ratio) -> String {
    let denominator = value.denom().unsigned_abs();
    let short_fraction = denominator <= FINEST_FRACTION;
    if short_fraction && denominator.is_power_of_two() {
        fraction_text(value)
    } else if is_short_decimal(denominator) {
        without_trailing_zeros(&rounded_text(value, DECIMAL_PLACES))
    } else if short_fraction {
        fraction_text(value)
    } else {
        format!("about {}", without_trailing_zeros(&rounded_text(value, 3)))
    }
}

/// A whole number and a fraction: `15 5/8`, `-1/2`, `0`.
pub(crate) fn fraction_text(value: Ratio) -> String {
    let sign = sign_text(*value.numer());
    let numerator = value.numer().unsigned_abs();
    let denominator = value.denom().unsigned_abs();
    let whole = numerator.checked_div(denominator).unwrap_or(0);
    match (whole, numerator.checked_rem(denominator).unwrap_or(0)) {
        (_, 0) => format!("{sign}{whole}"),
        (0, rest) => format!("{sign}{rest}/{denominator}"),
        (_, rest) => format!("{sign}{whole} {rest}/{denominator}"),
    }
}

/// The nearest decimal with so many places, half away from zero.
pub(crate) fn rounded_text(value: Ratio, places: u32) -> String {
    decimal_text(nearest(10_i128.saturating_pow(places), value), places)
}

/// A whole number of decimal parts, of one place or more: 1234 with 2 places is `12.34`.
pub(crate) fn decimal_text(parts: i128, places: u32) -> String {
    let sign = sign_text(parts);
    let one = 10_u128.saturating_pow(places);
    let whole = parts.unsigned_abs().checked_div(one).unwrap_or(0);
    let rest = parts.unsigned_abs().checked_rem(one).unwrap_or(0);
    format!("{sign}{whole}.{rest:0width$}", width = places as usize)
}

/// A decimal without the zeros that say nothing: `12.50` is `12.5`, `12.00` is `12`.
pub(crate) fn without_trailing_zeros(decimal: &str) -> String {
    decimal
        .trim_end_matches('0')
        .trim_end_matches('.')
        .to_owned()
}

/// The finest fraction on a workroom's rule.
const FINEST_FRACTION: u128 = 64;
/// More places than this are not read but guessed at.
const DECIMAL_PLACES: u32 = 6;

/// Whether that denominator, in lowest terms, makes a decimal of few enough places.
fn is_short_decimal(denominator: u128) -> bool {
    10_u128
        .saturating_pow(DECIMAL_PLACES)
        .checked_rem(denominator)
        == Some(0)
}

fn sign_text(value: i128) -> &'static str {
    if value.is_negative() { "-" } else { "" }
}
