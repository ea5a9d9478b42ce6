//! A word that a property cannot read.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "word-not-expected",
    severity: Severity::Error,
    page: "\
The property is known, and its value has something in it that the property cannot read: a word it does
not know, or one more than it takes.

Half a value is not followed, since the part left out may be the part that mattered.

Write the value in one of the ways that the report lists.
",
    failing: Example::Text("fabric kelp-stripe { width: 54 in, way: sideways }\n"),
    mend: Example::Text("fabric kelp-stripe { width: 54 in, way: one-way }\n"),
};

/// A value says something that its property does not understand.
pub struct WordNotExpected<'a> {
    /// What is not understood.
    pub span: Span,
    /// The same as it is written.
    pub found: &'a str,
    /// The property or step whose value it is.
    pub property: &'a str,
    /// What the property can be: "`one-way` or `any`".
    pub can_be: &'a str,
}

impl From<WordNotExpected<'_>> for Diagnostic {
    fn from(told: WordNotExpected<'_>) -> Diagnostic {
        let WordNotExpected {
            span,
            found,
            property,
            can_be,
        } = told;
        CODE.report(format!(
            "`{property}` cannot be read: `{found}` is not expected"
        ))
        .label(span, "not expected here")
        .help(format!("`{property}` can be {can_be}"))
    }
}
