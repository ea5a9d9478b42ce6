//! Files that use files that use files, too many deep.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "use-too-deep",
    severity: Severity::Error,
    page: "\
A file may use another, and that a third, up to a hundred deep. A longer chain is surely a slip, and
nobody could find in it where a number comes from.

Use the files of a house style side by side from one file instead of one from another.
",
    failing: Example::Told("A chain of 102 files, each of which uses the next."),
    mend: Example::Told("One file that uses the other 101."),
};

/// The `use` at `span` goes deeper than the `limit`.
pub fn use_too_deep(span: Span, limit: usize) -> Diagnostic {
    CODE.report(format!("files use one another more than {limit} deep"))
        .label(span, "the chain is followed up to here")
        .help("use the files side by side from one file")
}
