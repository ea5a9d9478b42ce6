//! A file that the formatter cannot lay out without changing what it says.

use crate::{Code, Diagnostic, Example, Severity};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "format-would-change",
    severity: Severity::Error,
    page: "\
After laying a file out, `pelmet format` reads its own work again. Here it would have said something
else than before, or lost a comment, so the file was left as it is.

This is a fault of the formatter and not of the file, which says what it always said.

Build from the file as it is, and tell the makers of the compiler.
",
    failing: Example::Told("A file that shows a fault of the formatter; none is known."),
    mend: Example::Told("The same file, left as it is."),
};

/// The file at `path` would say something else if it were laid out anew.
pub fn format_would_change(path: &str) -> Diagnostic {
    CODE.report(format!(
        "`{path}` would say something else if it were laid out anew"
    ))
    .help("leave it as it is; this is a fault of the formatter")
}
