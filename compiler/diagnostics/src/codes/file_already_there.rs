//! Something that stands where a command would write.

use crate::{Code, Diagnostic, Example, Severity};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "file-already-there",
    severity: Severity::Error,
    page: "\
Something stands where the command would write, and the command did not write it. `pelmet new` wants a
folder that is empty or not there yet; `pelmet build` replaces a folder only if it holds nothing but a
packet.

What you keep there would be lost, so nothing is written at all.

Name another folder, or move what stands in the way.
",
    failing: Example::Told(
        "Building a packet into a folder that also holds photographs of the window.",
    ),
    mend: Example::Told("Building it into a folder of its own."),
};

/// Something not written by pelmet stands where a command would write.
pub struct FileAlreadyThere<'a> {
    /// Where the command would write, as the maker named it.
    pub path: &'a str,
    /// What stands there: "`notes.txt` in it".
    pub found: &'a str,
}

impl From<FileAlreadyThere<'_>> for Diagnostic {
    fn from(told: FileAlreadyThere<'_>) -> Diagnostic {
        let FileAlreadyThere { path, found } = told;
        CODE.report(format!("`{path}` would be written over"))
            .sum(format!("there is already {found}"))
            .help("name another folder, or move what stands in the way")
    }
}
