//! A file that is not text.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "file-not-text",
    severity: Severity::Error,
    page: "\
The file is not text in UTF-8, the encoding of nearly all text today. It may be a picture, a packed
file, or text saved by an old program in another encoding.

Its letters and fractions would be read as others, so it is not read at all.

Save it as plain text in UTF-8.
",
    failing: Example::Made {
        words: "A name whose e with an accent is one byte, as an old encoding writes it.",
        make: || b"fabric toile-caf\xe9 { width: 54 in }\n".to_vec(),
    },
    mend: Example::Text("fabric toile-café { width: 54 in }\n"),
};

/// The file at `path`, named at `place`, is not UTF-8.
pub fn file_not_text(place: Option<Span>, path: &str) -> Diagnostic {
    CODE.report(format!("the file `{path}` is not text"))
        .label_if_known(place, "this file is not text in UTF-8")
        .help("save it as plain text in UTF-8")
}
