//! Where a print begins that does not repeat across.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "print-without-repeat",
    severity: Severity::Error,
    page: "\
The cloth says where across the bolt its print begins, but not that its print repeats across. Without
a repeat across no piece is held to a place across the bolt, and the line would mean nothing.

Say the repeat across, or take the line out.
",
    failing: Example::Text(
        "\
fabric fern { width: 54 in, repeat: 12 in along, print begins: 2 in from left edge }
",
    ),
    mend: Example::Text(
        "\
fabric fern {
    width: 54 in
    repeat: 12 in along, 9 in across
    print begins: 2 in from left edge
}
",
    ),
};

/// The value at `span` says where the print of `name` begins, which has no repeat across.
pub fn print_without_repeat(span: Span, name: &str) -> Diagnostic {
    CODE.report(format!(
        "`{name}` says where its print begins across, but has no repeat across"
    ))
    .label(span, "no piece is held to this place")
    .help("say the repeat across, such as `repeat: 12 in along, 9 in across`")
}
