//! An `accept` line without a code or a reason.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "accept-unclear",
    severity: Severity::Error,
    page: "\
A warning is accepted by its code and with a reason, which the sheets then give, so that whoever
makes the treatment knows that it was thought of.

Write the code, a colon and the reason in quotes.
",
    failing: Example::Text(
        "\
accept seam-shows
",
    ),
    mend: Example::Text(
        "\
# Nothing is accepted.
",
    ),
};

/// The line at `span` does not say what is accepted and why.
pub fn accept_unclear(span: Span) -> Diagnostic {
    CODE.report("this line does not say which warning is accepted and why")
        .label(span, "a code, a colon and a reason in quotes are wanted")
        .help("write, for example, `accept seam-shows: \"the seam lies behind the lamp\"`")
}
