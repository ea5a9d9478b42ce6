//! A pleat rule without a single step.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "pleats-empty",
    severity: Severity::Error,
    page: "\
A pleat rule says where the pleats lie and how deep they are. This one says nothing.

Write its margins, pleats and spaces, or leave `pleats` out for a panel that hangs flat.
",
    failing: Example::Text(
        "\
pleats none-yet { layers: at most 5 }
",
    ),
    mend: Example::Text(
        "\
pleats two-knives {
    layers: at most 5
    margin 3 in
    knife 1 in toward left
    rest
}
",
    ),
};

/// The pleat rule `name` at `span` has no steps.
pub fn pleats_empty(span: Span, name: &str) -> Diagnostic {
    CODE.report(format!("the pleat rule `{name}` makes no pleats"))
        .label(span, "no steps follow")
        .help("write steps such as `margin 2 in` and `repeat: box 1 1/4 in, space 3 in`")
}
