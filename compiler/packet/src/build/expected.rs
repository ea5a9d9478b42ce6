//! Expected values: by how much one is out, and how it is told.

use pelmet_design::{Expected, ExpectedBound};
use pelmet_measure::Length;
use pelmet_workroom::ROUNDING;

/// How far a value is from what was expected: too much where positive.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub(crate) enum Out {
    /// By a length.
    Length(Length),
    /// By a count.
    Count(i64),
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
        ExpectedBound::Equals {
            value,
            within: Expected::Length(Length::ZERO) | Expected::Count(0),
        } => printed(value),
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
    pub(crate) fn in_words(self, printed: impl Fn(Length) -> String) -> String {
        match self {
            Self::Length(by) if by.is_negative() => format!("{} too little", printed(by.abs())),
            Self::Length(by) => format!("{} too much", printed(by)),
            Self::Count(by) if by.is_negative() => format!("{} too few", by.unsigned_abs()),
            Self::Count(by) => format!("{by} too many"),
        }
    }

    /// The sum that shows it for a value that came out, printed as `actual`:
    /// `20 in - 19 1/2 in allowed = 1/2 in too much`.
    pub(crate) fn sum(
        self,
        value: Expected,
        actual: &str,
        printed: impl Fn(Length) -> String,
    ) -> Option<String> {
        let (limit, too_little) = match (value, self) {
            (Expected::Length(value), Self::Length(by)) => (printed(value - by), by.is_negative()),
            (Expected::Count(value), Self::Count(by)) => {
                let limit = i64::from(value).saturating_sub(by);
                (limit.to_string(), by < 0)
            }
            _ => return None,
        };
        let out = self.in_words(printed);
        Some(if too_little {
            format!("{limit} wanted - {actual} = {out}")
        } else {
            format!("{actual} - {limit} allowed = {out}")
        })
    }

    fn opposite(self) -> Self {
        match self {
            Self::Length(by) => Self::Length(-by),
            Self::Count(by) => Self::Count(by.saturating_neg()),
        }
    }
}

/// The least and the most a bound allows.
fn limits(bound: ExpectedBound) -> (Option<Expected>, Option<Expected>) {
    match bound {
        ExpectedBound::Equals { value, within } => (less(value, within), more(value, within)),
        ExpectedBound::AtMost(most) => (None, Some(most)),
        ExpectedBound::AtLeast(least) => (Some(least), None),
        ExpectedBound::Between(least, most) => (Some(least), Some(most)),
    }
}

fn less(value: Expected, by: Expected) -> Option<Expected> {
    match (value, by) {
        (Expected::Length(value), Expected::Length(by)) => Some(Expected::Length(value - by)),
        (Expected::Count(value), Expected::Count(by)) => {
            Some(Expected::Count(value.saturating_sub(by)))
        }
        _ => None,
    }
}

fn more(value: Expected, by: Expected) -> Option<Expected> {
    match (value, by) {
        (Expected::Length(value), Expected::Length(by)) => Some(Expected::Length(value + by)),
        (Expected::Count(value), Expected::Count(by)) => {
            Some(Expected::Count(value.saturating_add(by)))
        }
        _ => None,
    }
}

/// By how much one value is more than another; `None` where it is not, or they are not of one kind.
fn beyond(value: Expected, limit: Expected) -> Option<Out> {
    match (value, limit) {
        (Expected::Length(value), Expected::Length(limit)) => {
            (value - limit > ROUNDING).then_some(Out::Length(value - limit))
        }
        (Expected::Count(value), Expected::Count(limit)) => {
            let by = i64::from(value).saturating_sub(limit.into());
            (by > 0).then_some(Out::Count(by))
        }
        _ => None,
    }
}

#[cfg(test)]
mod tests {
    use pelmet_design::Expected::{Count, Length as Of};
    use pelmet_design::ExpectedBound::{AtLeast, AtMost, Between, Equals};
    use pelmet_measure::{Length, Style};

    use super::{Out, bound_in_words, out_of_bound};

    fn inches(whole: i64) -> Length {
        Length::inches(whole)
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
            let out = out.map(|by| Out::Length(inches(by)));
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
                out.map(Out::Count),
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
            Some(Out::Length(-micrometres))
        );
    }

    #[test]
    fn bounds_and_amounts_are_told_in_words() {
        let style = Style::INCHES;
        let printed = |value| match value {
            Of(length) => style.plain(length),
            Count(count) => count.to_string(),
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
            (Out::Length(inches(2)), "2 in too much"),
            (Out::Length(-inches(2)), "2 in too little"),
            (Out::Count(3), "3 too many"),
            (Out::Count(-1), "1 too few"),
        ] {
            assert_eq!(out.in_words(|length| style.plain(length)), text);
        }
    }
}
