//! Two parts of a value without the comma between them.

use crate::example::one_window;
use crate::{Code, Diagnostic, Fix, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "comma-missing",
    severity: Severity::Error,
    page: "\
The value has several parts, and the comma between two of them is missing.

Write the comma: `rod: brass-pole(72 in), top at 86 in`.
",
    failing: one_window! {
        panel: ["finished width: 40 in", "drop: 14 in"],
        window: "rod: pole top at 84 in",
    },
    mend: one_window! {
        panel: ["finished width: 40 in", "drop: 14 in"],
        window: "rod: pole, top at 84 in",
    },
};

/// A part of a value follows another without a comma.
pub struct CommaMissing<'a> {
    /// Where the comma belongs: what it is put before.
    pub comma: Span,
    /// The part that follows.
    pub span: Span,
    /// The property whose value it is.
    pub property: &'a str,
    /// How such a part begins.
    pub part: &'a str,
}

impl From<CommaMissing<'_>> for Diagnostic {
    fn from(told: CommaMissing<'_>) -> Diagnostic {
        let CommaMissing {
            comma,
            span,
            property,
            part,
        } = told;
        CODE.report(format!("`{property}` lacks a comma before `{part}`"))
            .label(span, "a comma is missing before this")
            .help(format!("write `, {part}`"))
            .fix(Fix::insert("write the comma", comma, ","))
    }
}
