//! How far folding by hand may put a panel out.

use pelmet_measure::Length;
use pelmet_model::PleatRule;

/// By how much the finished width may be out when every crease is folded by hand, worst case and
/// likely: 2en and 2e*sqrt(n) for n pleats with an error of e, rounded down to the nanometre.
/// `None` where the rule states no error.
pub fn tolerance(rule: &PleatRule, pleats: usize) -> Option<(Length, Length)> {
    let one = rule.folding_error?.abs() * 2;
    let count = i64::try_from(pleats).unwrap_or(i64::MAX);
    let square = i128::from(one.nanometres())
        .saturating_mul(one.nanometres().into())
        .saturating_mul(count.into());
    let likely = i64::try_from(square.checked_isqrt()?).unwrap_or(i64::MAX);
    Some((one * count, Length::from_nanometres(likely)))
}
