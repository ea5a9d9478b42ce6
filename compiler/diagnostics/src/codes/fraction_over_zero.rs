//! A fraction of zero parts.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "fraction-over-zero",
    severity: Severity::Error,
    page: "\
The lower number of a fraction is zero. The lower number says into how many parts one inch, or one
whole, is divided; into no parts is nothing that can be measured.

Write the number of parts: `1/2 in` is one of two.
",
    failing: Example::Text("fabric kelp-stripe { width: 54 1/0 in }\n"),
    mend: Example::Text("fabric kelp-stripe { width: 54 1/2 in }\n"),
};

/// The fraction at `fraction` has a lower number of zero.
pub fn fraction_over_zero(fraction: Span) -> Diagnostic {
    CODE.report("a fraction has zero as its lower number")
        .label(fraction, "divided into no parts")
        .help("write the number of parts below the line, as in `1/2 in`")
}
