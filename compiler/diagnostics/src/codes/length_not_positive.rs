//! A length of nothing or less where there must be some.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "length-not-positive",
    severity: Severity::Error,
    page: "\
The length comes out as nothing, or as less than nothing, and the thing it measures must have a size: a
fabric a width, a panel a drop, a pleat a depth.

It is often the result of a sum whose parts were exchanged, or of a measure that is too small for what
is taken from it.

Check the sum that the report shows.
",
    failing: Example::Text("fabric kelp-stripe { width: 0 in }\n"),
    mend: Example::Text("fabric kelp-stripe { width: 54 in }\n"),
};

/// A length comes out at nothing or less.
pub struct LengthNotPositive<'a> {
    /// The number, or the sum that gives it.
    pub span: Span,
    /// The property that says it: "width".
    pub what: &'a str,
    /// What it comes out at.
    pub length: &'a str,
}

impl From<LengthNotPositive<'_>> for Diagnostic {
    fn from(told: LengthNotPositive<'_>) -> Diagnostic {
        let LengthNotPositive { span, what, length } = told;
        CODE.report(format!("{what} must be more than nothing, and is {length}"))
            .label(span, format!("this is {length}"))
            .help("check the measure, and what is subtracted from it")
    }
}
