//! Names that stand for names that stand for names, too many times over.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "names-too-deep",
    severity: Severity::Error,
    page: "\
A name may stand for another name, and that for a third, up to a hundred times. A longer chain is
surely a slip, and nobody could follow it.

Give one of the names a measure of its own.
",
    failing: Example::Made {
        words: "A hundred and two measures, each of which stands for the one before.",
        make: || chain(102),
    },
    mend: Example::Made {
        words: "The same, with ten measures.",
        make: || chain(10),
    },
};

/// Following names has come to `span` after `limit` of them.
pub fn names_too_deep(span: Span, limit: usize) -> Diagnostic {
    CODE.report(format!(
        "more than {limit} names stand for one another here"
    ))
    .label(span, "the chain is followed up to here")
    .help("give one of the names a measure of its own")
}

fn chain(length: usize) -> Vec<u8> {
    let links =
        (1..length).map(|link| format!("measure step-{link}: step-{}\n", link.saturating_sub(1)));
    let text: String = std::iter::once(String::from("measure step-0: 1 in\n"))
        .chain(links)
        .collect();
    text.into_bytes()
}
