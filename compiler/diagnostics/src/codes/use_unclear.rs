//! A `use` line that names neither a file nor the standard library.

use crate::{Code, Diagnostic, Example, Fix, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "use-unclear",
    severity: Severity::Error,
    page: "\
`use` brings in a file of your own, its path in quotes, or files of the standard library.

Write `use \"styles/house.pelmet\"`, `use standard`, or `use standard pleats, headings`.
",
    failing: Example::Text(
        "\
use styles
",
    ),
    mend: Example::Text(
        "\
use standard pleats
",
    ),
};

/// The `use` line at `span` says neither a path nor `standard`, though perhaps the word at
/// `meant_standard` was meant so.
pub fn use_unclear(span: Span, meant_standard: Option<Span>) -> Diagnostic {
    let diagnostic = CODE
        .report("this `use` does not say what to use")
        .label(span, "a path in quotes, or `standard`, should follow");
    let diagnostic = match meant_standard {
        Some(word) => diagnostic
            .help("did you mean `standard`?")
            .fix(Fix::replace("write `standard`", word, "standard")),
        None => diagnostic,
    };
    diagnostic
        .help("write `use \"styles/house.pelmet\"` for a file of yours, or `use standard pleats`")
}
