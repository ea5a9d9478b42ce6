//! A count that is not a whole number.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
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

/// What must be a number of things is not a whole number, or too small a one.
pub struct CountNotWhole<'a> {
    /// The number, or the sum that gives it.
    pub span: Span,
    /// What it is the number of: "repeat".
    pub what: &'a str,
    /// What it comes to, as a plain number.
    pub number: &'a str,
    /// The least there may be: one, or of what is expected none.
    pub least: u32,
}

impl From<CountNotWhole<'_>> for Diagnostic {
    fn from(told: CountNotWhole<'_>) -> Diagnostic {
        let CountNotWhole {
            span,
            what,
            number,
            least,
        } = told;
        CODE.report(format!(
            "{what} must be a whole number of at least {least}, and is {number}"
        ))
        .label(span, format!("this is {number}"))
        .help(format!("write a whole number of at least {least}"))
    }
}
