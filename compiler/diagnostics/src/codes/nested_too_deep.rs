//! Brackets within brackets beyond all reason.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "nested-too-deep",
    severity: Severity::Error,
    page: "\
Brackets are opened inside brackets more deeply than the limit. No treatment needs a fraction of it;
usually a close was lost again and again, or the text was not written by hand.

The limit is there so that no file can wear out the machine that reads it.

Close the brackets, or give the inner parts names of their own.
",
    failing: Example::Made {
        words: "A fabric whose width stands inside two hundred round brackets.",
        make: deeply_nested,
    },
    mend: Example::Text("fabric kelp-stripe { width: (54 in) }\n"),
};

/// The bracket at `span` is one deeper than the `limit`.
pub fn nested_too_deep(span: Span, limit: usize) -> Diagnostic {
    CODE.report(format!("brackets are nested more than {limit} deep"))
        .label(span, "one bracket too many")
        .help("close the brackets before it, or give the inner parts names of their own")
}

fn deeply_nested() -> Vec<u8> {
    let (open, close) = ("(".repeat(200), ")".repeat(200));
    format!("fabric kelp-stripe {{ width: {open}54 in{close} }}\n").into_bytes()
}
