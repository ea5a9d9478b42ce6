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

/// The use of `template` at `used` leaves out `parameter`, which it asks for at `asked`, unless that
/// is in the standard library.
pub fn argument_missing(
    used: Span,
    template: &str,
    parameter: &str,
    asked: Option<Span>,
) -> Diagnostic {
    CODE.report(format!("`{template}` is not given its `{parameter}`"))
        .label(used, format!("`{parameter}` is missing here"))
        .label_if_known(asked, "asked for here")
        .help(format!("write `{template}({parameter}: …)`"))
}
