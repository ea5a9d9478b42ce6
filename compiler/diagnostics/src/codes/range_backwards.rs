//! A range whose first end is larger than its second.

use crate::{Code, Diagnostic, Example, Fix, Severity, Span};

/// A range whose first end is larger than its second.
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

/// The range from `first` to `second` runs backwards; each end with its text as typed.
pub fn range_backwards(
    (first, first_text): (Span, &str),
    (second, second_text): (Span, &str),
) -> Diagnostic {
    let fix = Fix::replace("exchange the two ends", first, second_text).and(second, first_text);
    CODE.report(format!(
        "the range `{first_text} to {second_text}` runs backwards"
    ))
    .label(first, "the larger end stands first")
    .label(second, "and the smaller one second")
    .help(format!("write `{second_text} to {first_text}`"))
    .fix(fix)
}
