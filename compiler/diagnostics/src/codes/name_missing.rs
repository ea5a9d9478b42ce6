//! An item without a name.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// An item without a name.
pub const CODE: Code = Code {
    slug: "name-missing",
    severity: Severity::Error,
    page: "\
Every fabric, rod, panel and window has a name of its own, by which the rest of the design and the
sheets speak of it.

Write a name of letters, digits and hyphens after the first word: `fabric sea-linen { ... }`.
",
    failing: Example::Text(
        "\
fabric { width: 54 in }
",
    ),
    mend: Example::Text(
        "\
fabric sea-linen { width: 54 in }
",
    ),
};

/// The item at `span` has no name; `kind` is what it is ("a fabric"), `line` how it could begin.
pub fn name_missing(span: Span, kind: &str, line: &str) -> Diagnostic {
    CODE.report(format!("{kind} has no name"))
        .label(span, "a name should follow here")
        .help(format!("write, for example, `{line}`"))
}
