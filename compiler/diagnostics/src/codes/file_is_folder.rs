//! A folder where a file is wanted.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "file-is-folder",
    severity: Severity::Error,
    page: "\
The path leads to a folder. A `use` line names one file, so that the reader of a design sees exactly
what goes into it.

Name the file in the folder.
",
    failing: Example::Files(&[
        ("main.pelmet", "use \"styles\"\n"),
        ("styles/harbor.pelmet", "units inches\n"),
    ]),
    mend: Example::Files(&[
        ("main.pelmet", "use \"styles/harbor.pelmet\"\n"),
        ("styles/harbor.pelmet", "units inches\n"),
    ]),
};

/// `path`, named at `place`, is a folder.
pub fn file_is_folder(place: Option<Span>, path: &str) -> Diagnostic {
    CODE.report(format!("`{path}` is a folder, not a file"))
        .label_if_known(place, "this is a folder")
        .help("name a file in it")
}
