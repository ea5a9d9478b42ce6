//! A length beyond any window.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "length-too-large",
    severity: Severity::Error,
    page: "\
The length is larger than the largest that a design may state. No window comes near it; most likely the
unit is wrong or a point was lost.

Check the digits and the unit: 1200 mm is not 1200 m.
",
    failing: Example::Text("rod brass-pole { length: 72000 m, diameter: 28 mm }\n"),
    mend: Example::Text("rod brass-pole { length: 1800 mm, diameter: 28 mm }\n"),
};

/// The length at `span` is over the `limit`, which is printed with its unit.
pub fn length_too_large(span: Span, limit: &str) -> Diagnostic {
    CODE.report(format!("a length is more than {limit}"))
        .label(span, format!("more than {limit}"))
        .help("check its digits and its unit")
}
