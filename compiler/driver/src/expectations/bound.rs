//! Expected values: by how much one is out, and how it is told.

use pelmet_design::{Expected, ExpectedBound};
use pelmet_workroom::ROUNDING;

/// How far a value is from what was expected.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub(crate) struct Out {
    /// By how much.
    by: Expected,
    too_much: bool,
}

/// By how much a value is outside its bound; `None` where it is inside.
///
/// Lengths that differ by no more than a rounding are equal: a third of ten inches is stated to the
/// nanometre, and shares of a row are rounded down to one.
pub(crate) fn out_of_bound(actual: Expected, bound: ExpectedBound) -> Option<Out> {
    let (least, most) = limits(bound);
    let over = most.and_then(|most| beyond(actual, most));
    let under = || {
        least
            .and_then(|least| beyond(least, actual))
            .map(Out::opposite)
    };
    over.or_else(under)
}

/// The bound in words: `10 in within 1/4 in`, `at most 6 yd`.
pub(crate) fn bound_in_words(bound: ExpectedBound, printed: impl Fn(Expected) -> String) -> String {
    match bound {
        ExpectedBound::Equals { value, within } if within.units() == 0 => printed(value),
        ExpectedBound::Equals { value, within } => {
            format!("{} within {}", printed(value), printed(within))
        }
        ExpectedBound::AtMost(most) => format!("at most {}", printed(most)),
        ExpectedBound::AtLeast(least) => format!("at least {}", printed(least)),
        ExpectedBound::Between(least, most) => format!("{} to {}", printed(least), printed(most)),
    }
}

impl Out {
    /// In words: `1 3/4 in too much`, `2 too few`.
    pub(crate) fn in_words(self, printed: impl Fn(Expected) -> String) -> String {
        let out = match (self.by, self.too_much) {
            (Expected::Count(_), true) => "too many",
            (Expected::Count(_), false) => "too few",
            (_, true) => "too much",
            (_, false) => "too little",
        };
        format!("{} {out}", printed(self.by))
    }

    /// The sum that shows it for a value that came out, printed as `actual`:
    /// `20 in - 19 1/2 in allowed = 1/2 in too much`.
    pub(crate) fn sum(
        self,
        value: Expected,
        actual: &str,
        printed: impl Fn(Expected) -> String,
    ) -> String {
        let by = self.by.units();
        let out = self.in_words(&printed);
        let limit = |by| printed(value.with_units(value.units().saturating_sub(by)));
        if self.too_much {
            format!("{actual} - {} allowed = {out}", limit(by))
        } else {
            format!("{} wanted - {actual} = {out}", limit(by.saturating_neg()))
        }
    }

    fn opposite(self) -> Self {
        Self {
            too_much: !self.too_much,
            ..self
        }
    }
}

/// The least and the most a bound allows.
fn limits(bound: ExpectedBound) -> (Option<Expected>, Option<Expected>) {
    match bound {
        ExpectedBound::Equals { value, within } => {
            let by = within.units();
            let moved = |by: i64| value.with_units(value.units().saturating_add(by));
            (Some(moved(by.saturating_neg())), Some(moved(by)))
        }
        ExpectedBound::AtMost(most) => (None, Some(most)),
        ExpectedBound::AtLeast(least) => (Some(least), None),
        ExpectedBound::Between(least, most) => (Some(least), Some(most)),
    }
}

/// By how much one value is more than another; `None` where it is not, or they are not of one kind.
fn beyond(value: Expected, limit: Expected) -> Option<Out> {
    let rounding = match value {
        Expected::Length(_) => ROUNDING.nanometres(),
        Expected::Count(_) | Expected::Weight(_) | Expected::Money(_) => 0,
    };
    let by = value.units().saturating_sub(limit.units());
    (value.is_like(limit) && by > rounding).then(|| Out {
        by: value.with_units(by),
        too_much: true,
    })
}

#[cfg(test)]
mod tests {
    use pelmet_design::Expected::{self, Count, Length as Of};
    use pelmet_design::ExpectedBound::{AtLeast, AtMost, Between, Equals};
    use pelmet_measure::{Length, Style};

    use super::{Out, bound_in_words, out_of_bound};

    fn inches(whole: i64) -> Length {
        Length::inches(whole)
    }

    /// Too much where positive.
    fn out(by: i64, of: impl Fn(i64) -> Expected) -> Out {
        Out {
            by: of(by.abs()),
            too_much: by > 0,
        }
    }

    fn count(of: i64) -> Expected {
        Count(u32::try_from(of).expect("a small count"))
    }

    #[test]
    fn a_value_is_out_by_what_lies_between_it_and_its_bound() {
        let within = |value, within| Equals {
            value: Of(inches(value)),
            within: Of(inches(within)),
        };
        for (actual, bound, out) in [
            (10, within(10, 0), None),
            (11, within(10, 0), Some(1)),
            (8, within(10, 0), Some(-2)),
            (11, within(10, 1), None),
            (8, within(10, 1), Some(-1)),
            (10, AtMost(Of(inches(10))), None),
            (13, AtMost(Of(inches(10))), Some(3)),
            (9, AtLeast(Of(inches(10))), Some(-1)),
            (10, AtLeast(Of(inches(10))), None),
            (12, Between(Of(inches(3)), Of(inches(5))), Some(7)),
            (1, Between(Of(inches(3)), Of(inches(5))), Some(-2)),
            (4, Between(Of(inches(3)), Of(inches(5))), None),
        ] {
            let out = out.map(|by| super::tests::out(by, |by| Of(inches(by))));
            assert_eq!(
                out_of_bound(Of(inches(actual)), bound),
                out,
                "{actual} {bound:?}"
            );
        }
    }

    #[test]
    fn counts_are_out_by_whole_pleats() {
        let equals = Equals {
            value: Count(5),
            within: Count(0),
        };
        for (actual, bound, out) in [
            (5, equals, None),
            (7, equals, Some(2)),
            (3, equals, Some(-2)),
            (0, AtLeast(Count(2)), Some(-2)),
            (u32::MAX, AtMost(Count(0)), Some(i64::from(u32::MAX))),
        ] {
            assert_eq!(
                out_of_bound(Count(actual), bound),
                out.map(|by: i64| super::tests::out(by, count)),
                "{actual} {bound:?}"
            );
        }
    }

    #[test]
    fn a_rounding_is_no_difference() {
        let third = Length::inch_fraction(10, 3);
        let bound = Equals {
            value: Of(third),
            within: Of(Length::ZERO),
        };
        assert_eq!(
            out_of_bound(Of(third + Length::from_nanometres(3)), bound),
            None
        );
        let micrometres = Length::from_nanometres(2_000);
        assert_eq!(
            out_of_bound(Of(third - micrometres), bound),
            Some(Out {
                by: Of(micrometres),
                too_much: false
            })
        );
    }

    #[test]
    fn bounds_and_amounts_are_told_in_words() {
        let style = Style::INCHES;
        let printed = |value| match value {
            Of(length) => style.plain(length),
            Count(count) => count.to_string(),
            other => format!("{other:?}"),
        };
        let (one, ten) = (Of(inches(1)), Of(inches(10)));
        for (bound, text) in [
            (
                Equals {
                    value: ten,
                    within: Of(Length::ZERO),
                },
                "10 in",
            ),
            (
                Equals {
                    value: ten,
                    within: one,
                },
                "10 in within 1 in",
            ),
            (
                Equals {
                    value: Count(4),
                    within: Count(0),
                },
                "4",
            ),
            (AtMost(Count(4)), "at most 4"),
            (AtLeast(one), "at least 1 in"),
            (Between(one, ten), "1 in to 10 in"),
        ] {
            assert_eq!(bound_in_words(bound, printed), text);
        }
        for (out, text) in [
            (out(2, |by| Of(inches(by))), "2 in too much"),
            (out(-2, |by| Of(inches(by))), "2 in too little"),
            (out(3, count), "3 too many"),
            (out(-1, count), "1 too few"),
        ] {
            assert_eq!(out.in_words(printed), text);
        }
    }
}
