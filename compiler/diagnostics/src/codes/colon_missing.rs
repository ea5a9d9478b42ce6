//! A property without the colon before its value.

use crate::{Code, Diagnostic, Example, Fix, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "colon-missing",
    severity: Severity::Error,
    page: "\
The line begins with the name of a property and goes on with its value, and the colon between the two
is missing.

Write the colon: `drop: 17 in`.
",
    failing: Example::Text("fabric kelp-stripe { width 54 in }\n"),
    mend: Example::Text("fabric kelp-stripe { width: 54 in }\n"),
};

/// The `property` named at `span` has a value, and no colon before it.
pub fn colon_missing(span: Span, property: &str) -> Diagnostic {
    CODE.report(format!("`{property}` has no colon before its value"))
        .label(span, "a colon is missing after this")
        .help(format!("write `{property}:`"))
        .fix(Fix::insert("write the colon", span.end_of(), ":"))
}
