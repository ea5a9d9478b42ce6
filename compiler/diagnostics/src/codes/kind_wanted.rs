//! A quantity of one kind where another is wanted.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
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

/// A value is of another kind than its place wants.
pub struct KindWanted<'a> {
    /// The value, or the sum that gives it.
    pub span: Span,
    /// The kind that is wanted, with its article: "a length".
    pub wanted: &'a str,
    /// The kind it is, with its article: "a plain number".
    pub found: &'a str,
}

impl From<KindWanted<'_>> for Diagnostic {
    fn from(told: KindWanted<'_>) -> Diagnostic {
        let KindWanted {
            span,
            wanted,
            found,
        } = told;
        CODE.report(format!("{wanted} is wanted, not {found}"))
            .label(span, format!("this is {found}"))
            .help(format!("write {wanted} here"))
    }
}
