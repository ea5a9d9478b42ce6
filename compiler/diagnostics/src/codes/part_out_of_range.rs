//! A part of something that is less than nothing or more than all of it.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "part-out-of-range",
    severity: Severity::Error,
    page: "\
Shrinkage is a part of the cloth's length: nothing or more, and less than all of it. Fullness is how
many times the finished width, and more than nothing.

Write shrinkage as a percentage, such as `3 %`, and fullness such as `2 1/2 times`.
",
    failing: Example::Text(
        "\
fabric calico { width: 45 in, shrinkage: 3 }
",
    ),
    mend: Example::Text(
        "\
fabric calico { width: 45 in, shrinkage: 3 % }
",
    ),
};

/// A percentage or a ratio is one that cannot be.
pub struct PartOutOfRange<'a> {
    /// The percentage or the ratio, as it is written.
    pub span: Span,
    /// The property that says it: "fullness".
    pub property: &'a str,
    /// What it comes to, as a plain number.
    pub number: &'a str,
}

impl From<PartOutOfRange<'_>> for Diagnostic {
    fn from(told: PartOutOfRange<'_>) -> Diagnostic {
        let PartOutOfRange {
            span,
            property,
            number,
        } = told;
        CODE.report(format!("a {property} of {number} cannot be"))
            .label(span, format!("this comes to {number}"))
            .help("write shrinkage as a percentage, such as `3 %`, and fullness such as `2 1/2 times`")
    }
}
