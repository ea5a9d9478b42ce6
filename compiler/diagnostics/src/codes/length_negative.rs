//! A length of less than nothing.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "length-negative",
    severity: Severity::Error,
    page: "\
The length comes out as less than nothing. Here it may be nothing, but not less: an allowance, a
margin or a space cannot be taken back from the cloth.

It is often the result of a sum whose parts were exchanged.

Check the sum that the report shows.
",
    failing: Example::Text("fabric kelp-stripe { width: 54 in, selvage: -1/2 in }\n"),
    mend: Example::Text("fabric kelp-stripe { width: 54 in, selvage: 1/2 in }\n"),
};

/// A length comes out at less than nothing.
pub struct LengthNegative<'a> {
    /// The number, or the sum that gives it.
    pub span: Span,
    /// The property that says it: "selvage".
    pub what: &'a str,
    /// What it comes out at.
    pub length: &'a str,
}

impl From<LengthNegative<'_>> for Diagnostic {
    fn from(told: LengthNegative<'_>) -> Diagnostic {
        let LengthNegative { span, what, length } = told;
        CODE.report(format!(
            "{what} cannot be less than nothing, and is {length}"
        ))
        .label(span, format!("this is {length}"))
        .help("check the measure, and what is subtracted from it")
    }
}
