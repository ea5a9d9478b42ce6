//! A value that a template asks for and is not given.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "argument-missing",
    severity: Severity::Error,
    page: "\
A template asks for a value, has none to fall back on, and is not given one where it is used.

Without it some size stays open, and no piece can be cut to an open size.

Give the value, in its place in the row or by name: `brass-pole(length: 72 in)`. If there is a usual
value, write it into the template: `rod brass-pole(length = 72 in)`.
",
    failing: Example::Text(
        "\
rod brass-pole(length) { length: length, diameter: 1 1/8 in }
rod long-pole like brass-pole()
",
    ),
    mend: Example::Text(
        "\
rod brass-pole(length) { length: length, diameter: 1 1/8 in }
rod long-pole like brass-pole(72 in)
",
    ),
};

/// A template is used without something it asks for.
pub struct ArgumentMissing<'a> {
    /// The name of the template where it is used, with its brackets.
    pub used: Span,
    /// What the template is called.
    pub template: &'a str,
    /// The parameter that is given nothing and has nothing of its own.
    pub parameter: &'a str,
    /// Where the template asks for it, unless it is one of the standard library.
    pub asked: Option<Span>,
}

impl From<ArgumentMissing<'_>> for Diagnostic {
    fn from(told: ArgumentMissing<'_>) -> Diagnostic {
        let ArgumentMissing {
            used,
            template,
            parameter,
            asked,
        } = told;
        CODE.report(format!("`{template}` is not given its `{parameter}`"))
            .label(used, format!("`{parameter}` is missing here"))
            .label_if_known(asked, "asked for here")
            .help(format!("write `{template}({parameter}: …)`"))
    }
}
