//! A file of the project that bears the name of one of the library.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "library-name-taken",
    severity: Severity::Error,
    page: "\
A `use` line names a file of the project that is called as a file of the standard library is called in
reports, such as `standard/pleats.pelmet`.

A report could then not say which of the two it speaks of, and a mistake would be looked for in the
wrong one.

Put the file into another folder, such as `styles`, or give it another name.
",
    failing: Example::Files(&[
        ("main.pelmet", "use \"standard/pleats.pelmet\"\n"),
        ("standard/pleats.pelmet", "units inches\n"),
    ]),
    mend: Example::Files(&[
        ("main.pelmet", "use \"styles/pleats.pelmet\"\n"),
        ("styles/pleats.pelmet", "units inches\n"),
    ]),
};

/// The `use` line at `span` names the file at `path`, which a file of the library is shown by.
pub fn library_name_taken(span: Span, path: &str) -> Diagnostic {
    CODE.report(format!("`{path}` is the name of a file of the library"))
        .label(span, "this names a file of your own")
        .help("put it into another folder, such as `styles`")
}
