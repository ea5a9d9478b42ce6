//! More words and signs in one file than the limit.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "too-many-words",
    severity: Severity::Error,
    page: "\
The file holds more words, signs and lines than the limit; comments are not counted. A job of a
thousand windows is a sixth of it, so that most likely the file is not a design at all.

The limit is there so that no file can wear out the machine that reads it.

Divide a very large job into several files, joined by `use` lines.
",
    failing: Example::Made {
        words: "A file that describes sixty thousand fabrics.",
        make: || fabrics(60_000),
    },
    mend: Example::Made {
        words: "The same file with six of them.",
        make: || fabrics(6),
    },
};

/// What stands at `here` is the first beyond the `limit`.
pub fn too_many_words(here: Span, limit: usize) -> Diagnostic {
    CODE.report(format!("the file has more than {limit} words and signs"))
        .label(here, "it is read no further than this")
        .help("check that it is a design; divide it into several files if it is")
}

fn fabrics(count: usize) -> Vec<u8> {
    let line = |number| format!("fabric cloth-{number} {{ width: 54 in }}\n");
    (0..count).map(line).collect::<String>().into_bytes()
}
