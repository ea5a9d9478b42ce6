//! A number beyond all use.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "number-too-large",
    severity: Severity::Error,
    page: "\
The number is larger than the sums can keep exactly. No workroom counts, weighs or pays anything near
it; most likely a digit was held down or a point was lost.

Check the digits.
",
    failing: Example::Text("rod brass-pole { length: 72 in, diameter: 1 1/8 in, brackets: 300000000000000000000000000000000000000000 }\n"),
    mend: Example::Text("rod brass-pole { length: 72 in, diameter: 1 1/8 in, brackets: 3 }\n"),
};

/// The number at `span` is larger than can be reckoned with.
pub fn number_too_large(span: Span) -> Diagnostic {
    CODE.report("a number is too large to reckon with")
        .label(span, "too large")
        .help("check its digits and its decimal point")
}
