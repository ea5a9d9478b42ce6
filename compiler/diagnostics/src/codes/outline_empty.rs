//! An outline without a single step.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "outline-empty",
    severity: Severity::Error,
    page: "\
An outline says where its lower edge runs, from its start to the heading line. This one says
nothing.

Draw it: begin with `from`, go on with `to`, and end with `up to heading`.
",
    failing: Example::Text(
        "\
outline plain-edge { }
",
    ),
    mend: Example::Text(
        "\
outline plain-edge {
    from (0, drop)
    to (width, drop)
    up to heading
}
",
    ),
};

/// The outline `name` at `span` has no steps.
pub fn outline_empty(span: Span, name: &str) -> Diagnostic {
    CODE.report(format!("the outline `{name}` draws nothing"))
        .label(span, "no steps follow")
        .help("begin with `from (0, drop)`, go on with `to (width, drop)`, and end with `up to heading`")
}
