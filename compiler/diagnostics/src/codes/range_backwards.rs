//! A range whose first end is larger than its second.

use crate::{Code, Diagnostic, Example, Fix, PlacedText, Severity};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "range-backwards",
    severity: Severity::Error,
    page: "\
A range is written from the smaller to the larger: `3 in to 4 in`. Nothing lies between the ends as
they are.

Exchange the two ends, or correct the one that is wrong.
",
    failing: Example::Text(
        "\
pleats even {
    margin 2 in
    repeat: box 1 1/2 in, space 4 in to 3 in
    margin 2 in
}
",
    ),
    mend: Example::Text(
        "\
pleats even {
    margin 2 in
    repeat: box 1 1/2 in, space 3 in to 4 in
    margin 2 in
}
",
    ),
};

/// A range has its larger end first.
pub struct RangeBackwards {
    /// The end written first.
    pub first: PlacedText,
    /// The end written second.
    pub second: PlacedText,
}

impl From<RangeBackwards> for Diagnostic {
    fn from(told: RangeBackwards) -> Diagnostic {
        let RangeBackwards { first, second } = told;
        CODE.report(format!("the range `{first} to {second}` runs backwards"))
            .label(first.span, "the larger end stands first")
            .label(second.span, "and the smaller one second")
            .help(format!("write `{second} to {first}`"))
            .fix(
                Fix::replace("exchange the two ends", first.span, second.text)
                    .and(second.span, first.text),
            )
    }
}
