//! A count that is not a whole number.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// A count that is not a whole number.
pub const CODE: Code = Code {
    slug: "count-not-whole",
    severity: Severity::Error,
    page: "\
The value counts things, and is not a whole number, or is too small to be
one. There is no half of a
bracket and no third of a pleat.

Write a whole number. If it is the result of a sum, check the sum that the report shows.
",
    failing: Example::Text(
        "rod brass-pole { length: 72 in, diameter: 1 1/8 in, brackets: 2 1/2 }\n",
    ),
    mend: Example::Text("rod brass-pole { length: 72 in, diameter: 1 1/8 in, brackets: 3 }\n"),
};

/// `what` ("the number of brackets") at `span` comes out as `number`, which is not whole or is less
/// than the `least` there may be.
pub fn count_not_whole(span: Span, what: &str, number: &str, least: u32) -> Diagnostic {
    CODE.report(format!(
        "{what} must be a whole number of at least {least}, and is {number}"
    ))
    .label(span, format!("this is {number}"))
    .help(format!("write a whole number of at least {least}"))
}
