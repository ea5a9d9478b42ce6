//! A half-drop print that does not repeat along the cloth.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "half-drop-without-repeat",
    severity: Severity::Error,
    page: "\
In a half-drop print the next column lies half a repeat further along the cloth. Without a repeat along
the cloth there is no half of it.

Measure from one motif to the next one like it along the selvage, and say that as the repeat along.
",
    failing: Example::Text(
        "\
fabric fern { width: 54 in, repeat: 9 in across, half-drop }
",
    ),
    mend: Example::Text(
        "\
fabric fern { width: 54 in, repeat: 12 in along, 9 in across, half-drop }
",
    ),
};

/// The `half-drop` at `span` belongs to a repeat with no length along.
pub fn half_drop_without_repeat(span: Span) -> Diagnostic {
    CODE.report("a half-drop print needs a repeat along the cloth")
        .label(span, "half of what?")
        .help("say the repeat along too, such as `repeat: 12 in along, 9 in across, half-drop`")
}
