//! A quantity of one kind where another is wanted.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// A quantity of one kind where another is wanted.
pub const CODE: Code = Code {
    slug: "kind-wanted",
    severity: Severity::Error,
    page: "\
The value is a quantity, but not of the kind that belongs here: a length where a count is wanted, a
weight where a price is.

Write a quantity of the kind that the report names. A count has no unit; a length needs one.
",
    failing: Example::Text(
        "rod brass-pole { length: 72 in, diameter: 1 1/8 in, brackets: 3 in }\n",
    ),
    mend: Example::Text("rod brass-pole { length: 72 in, diameter: 1 1/8 in, brackets: 3 }\n"),
};

/// The value at `span` is `found` where `wanted` must stand; both with their articles: "a length",
/// "a plain number".
pub fn kind_wanted(span: Span, wanted: &str, found: &str) -> Diagnostic {
    CODE.report(format!("{wanted} is wanted, not {found}"))
        .label(span, format!("this is {found}"))
        .help(format!("write {wanted} here"))
}
