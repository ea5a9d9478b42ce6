//! An item without a name.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
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

/// An item begins with its kind and goes on without saying what it is called.
pub struct NameMissing<'a> {
    /// What stands where its name should, or the line that ends there.
    pub span: Span,
    /// What the item is: "fabric".
    pub kind: &'a str,
    /// How it could begin.
    pub line: &'a str,
}

impl From<NameMissing<'_>> for Diagnostic {
    fn from(told: NameMissing<'_>) -> Diagnostic {
        let NameMissing { span, kind, line } = told;
        CODE.report(format!("{kind} has no name"))
            .label(span, "a name should follow here")
            .help(format!("write, for example, `{line}`"))
    }
}
