//! A value given twice.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// A value given twice.
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

/// `argument` at `second` was given before, at `first`.
pub fn argument_twice(second: Span, first: Span, argument: &str) -> Diagnostic {
    CODE.report(format!("`{argument}` is given twice"))
        .label(second, "and here again")
        .label(first, "given here")
        .help("take one of them out")
}
