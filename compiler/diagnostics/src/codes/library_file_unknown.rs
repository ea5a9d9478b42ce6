//! A file that the standard library does not have.

use crate::{Code, Diagnostic, Example, Fix, Severity, Span, did_you_mean, listed};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "library-file-unknown",
    severity: Severity::Error,
    page: "\
A `use standard` line names a file of the standard library, and the library has no such file.

What it should describe is then missing from the design.

Write one of the names that the report lists, or `use standard` alone for all of them.
",
    failing: Example::Text("use standard pleat\n"),
    mend: Example::Text("use standard pleats\n"),
};

/// The standard library has no file `typed`, named at `span`; those it has are `known`.
pub fn library_file_unknown(span: Span, typed: &str, known: &[&str]) -> Diagnostic {
    let diagnostic = CODE
        .report(format!("the standard library has no file `{typed}`"))
        .label(span, "no such file in the library");
    let diagnostic = match did_you_mean(typed, known.iter().copied()) {
        Some(nearest) => diagnostic
            .help(format!("did you mean `{nearest}`?"))
            .fix(Fix::replace(format!("write `{nearest}`"), span, nearest)),
        None => diagnostic,
    };
    diagnostic.help(format!("the library has {}", listed(known, "and")))
}
