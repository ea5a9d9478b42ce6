//! A value that stops before it has said all.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "value-unfinished",
    severity: Severity::Error,
    page: "\
The value begins well and then stops: a repeat that does not say whether it runs along the cloth or
across it, a notch without its depth.

Half a value is not guessed at. Write the rest of it as the report shows.
",
    failing: Example::Text(
        "\
fabric kelp-stripe { width: 54 in, repeat: 12 in }
",
    ),
    mend: Example::Text(
        "\
fabric kelp-stripe { width: 54 in, repeat: 12 in along }
",
    ),
};

/// A value ends before it has said all.
pub struct ValueUnfinished<'a> {
    /// Where something is missing.
    pub span: Span,
    /// The property or step whose value it is.
    pub property: &'a str,
    /// What the property can be: "a length".
    pub can_be: &'a str,
}

impl From<ValueUnfinished<'_>> for Diagnostic {
    fn from(told: ValueUnfinished<'_>) -> Diagnostic {
        let ValueUnfinished {
            span,
            property,
            can_be,
        } = told;
        CODE.report(format!("`{property}` stops before it has said all"))
            .label(span, "something is missing here")
            .help(format!("`{property}` can be {can_be}"))
    }
}
