//! More diagnostics than are worth telling.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "too-many-mistakes",
    severity: Severity::Error,
    page: "\
There are so many mistakes that the rest of them are not listed. Most often a file is not a design at
all, or it was saved by a word processor.

The limit is there so that the first mistakes are not lost among the others.

Mend those that are listed and read the file again.
",
    failing: Example::Told(
        "A letter to a client, saved under the name of a design: hardly a line of it is a property.",
    ),
    mend: Example::Told("The design itself, saved as plain text."),
};

/// The diagnostic at `here` is the first beyond the `limit`.
pub fn too_many_mistakes(here: Option<Span>, limit: usize) -> Diagnostic {
    CODE.report(format!("there are more than {limit} mistakes"))
        .label_if_known(here, "the mistakes from here on are not listed")
        .help("mend those that are listed and read the file again")
}
