//! A value that a template asks for and is not given.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// A value that a template asks for and is not given.
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
    /// Where it is used.
    pub used: Span,
    /// Its name.
    pub template: &'a str,
    /// What it asks for.
    pub parameter: &'a str,
    /// Where it asks for it, unless that is in the standard library.
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
