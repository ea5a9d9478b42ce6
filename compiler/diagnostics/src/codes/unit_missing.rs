//! A length without its unit.

use crate::{Code, Diagnostic, Example, Fix, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "unit-missing",
    severity: Severity::Error,
    page: "\
A length is wanted and the number has no unit. Zero needs none; every other number does.

Between 18 inches and 18 centimetres lies most of a panel, so the unit is not guessed, not even from
the `units` line, which says how lengths are printed.

Write the unit after the number: `18 in`, `46 cm`. In a size the last unit serves both:
`40 x 54 in`.
",
    failing: Example::Text("fabric kelp-stripe { width: 54 }\n"),
    mend: Example::Text("fabric kelp-stripe { width: 54 in }\n"),
};

/// A number without a unit stands where a length must.
pub struct UnitMissing<'a> {
    /// The number, after which a unit can be put.
    pub number: Span,
    /// The number as it is written.
    pub typed: &'a str,
    /// The unit that this house writes most.
    pub unit: &'a str,
}

impl From<UnitMissing<'_>> for Diagnostic {
    fn from(told: UnitMissing<'_>) -> Diagnostic {
        let UnitMissing {
            number,
            typed,
            unit,
        } = told;
        CODE.report(format!("the length `{typed}` has no unit"))
            .label(number, "in what unit?")
            .help(format!("write `{typed} {unit}`"))
            .fix(Fix::insert(
                format!("write `{unit}` after it"),
                number.end_of(),
                format!(" {unit}"),
            ))
    }
}
