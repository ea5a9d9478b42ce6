//! An item without its properties.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// An item without its properties.
pub const CODE: Code = Code {
    slug: "block-missing",
    severity: Severity::Error,
    page: "\
The line names an item, and the curly brackets with its properties are missing.

Write them after the name: `fabric kelp-stripe { width: 54 in }`.
",
    failing: Example::Text("fabric kelp-stripe\n"),
    mend: Example::Text("fabric kelp-stripe { width: 54 in }\n"),
};

/// The `item` at `span` ("the fabric `kelp-stripe`") has no block; `line` is an example of what
/// belongs in it.
pub fn block_missing(span: Span, item: &str, line: &str) -> Diagnostic {
    CODE.report(format!("{item} is not described"))
        .label(span, "its properties are missing")
        .help(format!(
            "write them between curly brackets after the name: `{{ {line} }}`"
        ))
}
