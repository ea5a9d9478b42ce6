//! A preferred value outside its own range.

use crate::{Code, Diagnostic, Example, PlacedText, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "ideal-outside-range",
    severity: Severity::Error,
    page: "\
The value after `ideally` is the one you like best among those allowed, so it must lie between the
two limits.

Move the preferred value into the range, or widen the range.
",
    failing: Example::Text(
        "\
pleats rows {
    margin 2 in
    repeat: box 1 in, space 3 in to 4 in ideally 5 in
    margin 2 in
}
",
    ),
    mend: Example::Text(
        "\
pleats rows {
    margin 2 in
    repeat: box 1 in, space 3 in to 6 in ideally 5 in
    margin 2 in
}
",
    ),
};

/// What is preferred lies outside the range it is preferred in.
pub struct IdealOutsideRange<'a> {
    /// The length that `ideally` asks for.
    pub ideal: PlacedText,
    /// Both ends and what stands between them.
    pub range: Span,
    /// Its lower end.
    pub least: String,
    /// Its upper end.
    pub most: String,
    /// The property or step that takes such a range: "space".
    pub property: &'a str,
}

impl From<IdealOutsideRange<'_>> for Diagnostic {
    fn from(told: IdealOutsideRange<'_>) -> Diagnostic {
        let IdealOutsideRange {
            ideal,
            range,
            least,
            most,
            property,
        } = told;
        CODE.report(format!(
            "the preferred {property} of {ideal} is outside its own range"
        ))
        .label(ideal.span, "preferred here")
        .label(range, format!("but only {least} to {most} is allowed"))
        .help(format!(
            "write a value from {least} to {most} after `ideally`, or widen the range"
        ))
    }
}
