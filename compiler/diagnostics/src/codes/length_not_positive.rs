//! A length of nothing or less where there must be some.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// A length of nothing or less where there must be some.
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

/// `what` ("the width") at `span` comes out as `length`, which is not more than nothing.
pub fn length_not_positive(span: Span, what: &str, length: &str) -> Diagnostic {
    CODE.report(format!("{what} must be more than nothing, and is {length}"))
        .label(span, format!("this is {length}"))
        .help("check the measure, and what is subtracted from it")
}
