//! A value given twice.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "argument-twice",
    severity: Severity::Error,
    page: "\
One use of a template gives the same value twice: twice by name, or once in its place in the row and
once by name. Only one of them can be followed.

Take one of them out.
",
    failing: Example::Text(
        "\
rod brass-pole(length) { length: length, diameter: 1 1/8 in }
rod long-pole like brass-pole(length: 72 in, length: 80 in)
",
    ),
    mend: Example::Text(
        "\
rod brass-pole(length) { length: length, diameter: 1 1/8 in }
rod long-pole like brass-pole(length: 80 in)
",
    ),
};

/// A template is given the same thing twice.
pub struct ArgumentTwice<'a> {
    /// Where it is given again.
    pub second: Span,
    /// Where it is given the first time.
    pub first: Span,
    /// What it is called.
    pub argument: &'a str,
}

impl From<ArgumentTwice<'_>> for Diagnostic {
    fn from(told: ArgumentTwice<'_>) -> Diagnostic {
        let ArgumentTwice {
            second,
            first,
            argument,
        } = told;
        CODE.report(format!("`{argument}` is given twice"))
            .label(second, "and here again")
            .label(first, "given here")
            .help("take one of them out")
    }
}
