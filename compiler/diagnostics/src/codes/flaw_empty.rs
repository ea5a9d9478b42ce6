//! A flaw that ends where it begins.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "flaw-empty",
    severity: Severity::Error,
    page: "\
A flaw is a stretch of the bolt that nothing is cut from, written from where it begins to where it
ends. This one begins and ends at one place, so that nothing would be cut around.

Measure where the sound cloth begins again, and write that as the end.
",
    failing: Example::Text(
        "\
fabric calico { width: 45 in, flaws: 3 yd to 3 yd }
",
    ),
    mend: Example::Text(
        "\
fabric calico { width: 45 in, flaws: 3 yd to 3 yd 8 in }
",
    ),
};

/// The flaw at `span` begins and ends at `place`.
pub fn flaw_empty(span: Span, place: &str) -> Diagnostic {
    CODE.report(format!("a flaw begins and ends at {place}"))
        .label(span, "this is no length of cloth")
        .sum(format!("{place} - {place} = nothing to cut around"))
        .help("write where it ends, such as `3 yd to 3 yd 8 in`")
}
