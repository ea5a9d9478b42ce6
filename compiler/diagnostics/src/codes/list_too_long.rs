//! A list with more windows than one job may have.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "list-too-long",
    severity: Severity::Error,
    page: "\
A list of windows may have ten thousand lines. A longer one is probably some other kind of file, and
its cloth could not be laid out in one go.

Split the list into several jobs.
",
    failing: Example::Told("A list of 10,001 windows."),
    mend: Example::Told("Two lists, each in a job of its own."),
};

/// The line at `span` is the first one over the `limit`.
pub fn list_too_long(span: Span, limit: usize) -> Diagnostic {
    CODE.report(format!("this list has more than {limit} windows"))
        .label(span, "the list is read up to here")
        .help("split the list into several jobs")
}
