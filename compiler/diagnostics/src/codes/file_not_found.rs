//! A file that is not there.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "file-not-found",
    severity: Severity::Error,
    page: "\
A file is named on the command line or in a `use` line, and there is no file of that name.

What it should describe — pleat rules, outlines, ways of making — is then missing from the design.

Check the spelling and the folder. A path in a `use` line is written with `/`, whatever the machine.
",
    failing: Example::Files(&[
        ("main.pelmet", "use \"styles/habor.pelmet\"\n"),
        ("styles/harbor.pelmet", "units inches\n"),
    ]),
    mend: Example::Files(&[
        ("main.pelmet", "use \"styles/harbor.pelmet\"\n"),
        ("styles/harbor.pelmet", "units inches\n"),
    ]),
};

/// There is no file at `path`; `place` is the line that names it, if one does, and `suggestion` the
/// nearest file there is.
pub fn file_not_found(place: Option<Span>, path: &str, suggestion: Option<String>) -> Diagnostic {
    let diagnostic = CODE
        .report(format!("the file `{path}` is not found"))
        .label_if_known(place, "there is no such file");
    match suggestion {
        Some(nearest) => diagnostic.help(format!("did you mean `{nearest}`?")),
        None => diagnostic.help("check the spelling and the folder"),
    }
}
