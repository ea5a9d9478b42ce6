//! A warning accepted that does not arise.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "nothing-to-accept",
    severity: Severity::Warning,
    page: "\
The line accepts a warning, but that warning does not arise in its file or block. Perhaps the design
was mended, or the line stands in another place than the warning.

Take the line out, so that it cannot hide the warning if it comes back for another reason.
",
    failing: Example::Text(
        "\
fabric calico {
    width: 45 in,
    accept seam-shows: \"the room is dark\"
}
",
    ),
    mend: Example::Text(
        "\
fabric calico { width: 45 in }
",
    ),
};

/// The line at `span` accepts `code`, which does not arise there.
pub fn nothing_to_accept(span: Span, code: &str) -> Diagnostic {
    CODE.report(format!("`{code}` is accepted here but does not arise"))
        .label(span, "nothing here gives this warning")
        .help("take this line out")
}
