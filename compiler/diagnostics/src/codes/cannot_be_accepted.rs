//! An error accepted as though it were a warning.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "cannot-be-accepted",
    severity: Severity::Error,
    page: "\
A warning says what will probably disappoint, and you may know better. An error says what cannot be
made, and no reason changes that.

Take the line out and mend the design.
",
    failing: Example::Text(
        "\
accept fold-crosses-centre: \"it is meant so\"
",
    ),
    mend: Example::Text(
        "\
# The folds are mended instead.
",
    ),
};

/// The `code` at `span` is one of an error.
pub fn cannot_be_accepted(span: Span, code: &str) -> Diagnostic {
    CODE.report(format!("`{code}` is an error and cannot be accepted"))
        .label(span, "only warnings can be accepted")
        .help("take this line out and mend the design")
}
