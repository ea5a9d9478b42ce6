//! A file larger than the limit.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "file-too-large",
    severity: Severity::Error,
    page: "\
The file is larger than the limit. A design of a hundred windows is a small part of it; most likely it
is not a design at all.

The limit is there so that no file can wear out the machine that reads it.

Divide a very large job into several files, joined by `use` lines.
",
    failing: Example::Made {
        words: "A file of more than four mebibytes of notes.",
        make: || b"# nothing but notes\n".repeat(300_000),
    },
    mend: Example::Text("# nothing but notes\n"),
};

/// A file is larger than any design.
pub struct FileTooLarge<'a> {
    /// Where a design names it, if one does.
    pub place: Option<Span>,
    /// The path by which the file was named.
    pub path: &'a str,
    /// How many bytes it has.
    pub size: u64,
    /// The most that are read.
    pub limit: u64,
}

impl From<FileTooLarge<'_>> for Diagnostic {
    fn from(told: FileTooLarge<'_>) -> Diagnostic {
        let FileTooLarge {
            place,
            path,
            size,
            limit,
        } = told;
        CODE.report(format!("the file `{path}` is too large"))
            .label_if_known(place, "this file is too large")
            .sum(format!("{size} bytes, and at most {limit} are read"))
            .help("check that it is a design; divide it into several files if it is")
    }
}
