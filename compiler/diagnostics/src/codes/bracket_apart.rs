//! A blank between a name and the bracket with its values.

use crate::{Code, Diagnostic, Example, Fix, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "bracket-apart",
    severity: Severity::Error,
    page: "\
The values that a template asks for stand in round brackets that touch its name. With a blank between
them the bracket is a sum or a point of its own, and the template gets nothing.

Write the bracket right after the name: `brass-pole(72 in)`.
",
    failing: Example::Text(
        "\
rod brass-pole(length) { length: length, diameter: 1 1/8 in }
rod long-pole like brass-pole (72 in)
",
    ),
    mend: Example::Text(
        "\
rod brass-pole(length) { length: length, diameter: 1 1/8 in }
rod long-pole like brass-pole(72 in)
",
    ),
};

/// The bracket after `name` stands behind the blank at `gap`.
pub fn bracket_apart(gap: Span, name: &str) -> Diagnostic {
    CODE.report(format!("the bracket after `{name}` does not touch it"))
        .label(gap, "a blank too many")
        .help(format!(
            "the bracket must touch the name: write `{name}(` without a blank"
        ))
        .fix(Fix::remove("take out the blank", gap))
}
