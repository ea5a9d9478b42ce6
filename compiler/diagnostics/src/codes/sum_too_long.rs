//! A sum of more signs than anyone writes.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "sum-too-long",
    severity: Severity::Error,
    page: "\
One sum has more `+`, `-`, `*` and `/` in it than the limit.

The limit is there so that no file can wear out the machine that reads it, and a sum of that length
cannot be checked by eye.

Give its parts names of their own and add those.
",
    failing: Example::Made {
        words: "A fabric whose width is a sum of a thousand ones.",
        make: long_sum,
    },
    mend: Example::Text("fabric kelp-stripe { width: 1 in + 1 in }\n"),
};

/// The sum at `span` has more signs than the `limit`.
pub fn sum_too_long(span: Span, limit: usize) -> Diagnostic {
    CODE.report(format!("a sum has more than {limit} signs"))
        .label(span, "too long to be checked by eye")
        .help("give parts of it names of their own, and add those")
}

fn long_sum() -> Vec<u8> {
    let ones = " + 1 in".repeat(999);
    format!("fabric kelp-stripe {{ width: 1 in{ones} }}\n").into_bytes()
}
