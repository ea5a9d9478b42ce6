//! A file outside the project folder.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "file-outside-project",
    severity: Severity::Error,
    page: "\
A `use` line names a file that does not lie in the project folder or below it.

A project must be whole in itself: sent to another workroom, it must give the same pieces there. And a
design from elsewhere must not be able to read what else is on your machine.

Copy the file into the project and name it there.
",
    failing: Example::Text("use \"../harbor.pelmet\"\n"),
    mend: Example::Files(&[
        ("main.pelmet", "use \"styles/harbor.pelmet\"\n"),
        ("styles/harbor.pelmet", "units inches\n"),
    ]),
};

/// `path`, named at `place`, leads out of the project folder.
pub fn file_outside_project(place: Option<Span>, path: &str) -> Diagnostic {
    CODE.report(format!("the file `{path}` lies outside the project folder"))
        .label_if_known(place, "leads out of the project folder")
        .help("copy the file into the project folder and name it from there")
}
