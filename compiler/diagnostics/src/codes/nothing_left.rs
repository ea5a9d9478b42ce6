//! A size that comes out at nothing, or less.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// A size that comes out at nothing, or less.
pub const CODE: Code = Code {
    slug: "nothing-left",
    severity: Severity::Error,
    page: "\
When everything is taken off that has to be taken off, such as the allowances or the cloth in the
pleats, a size of the panel is nothing or less than nothing.

There is nothing to cut.

Make the size it is worked out from larger, or what is taken off it smaller.
",
    failing: one_window! {
        panel: ["cut width: 1/2 in", "drop: 14 in"],
    },
    mend: one_window! {
        panel: ["cut width: 41 in", "drop: 14 in"],
    },
};

/// The `size` of `panel` ("flat width") comes out at `length`, as the `sum` shows where it is
/// worked out from another size.
pub fn nothing_left(
    panel: &str,
    place: Span,
    (size, length): (&str, &str),
    sum: Option<String>,
) -> Diagnostic {
    let report = CODE
        .report(format!("the {size} of {panel} comes out at {length}"))
        .label(place, format!("leaves a {size} of {length}"));
    sum.into_iter()
        .fold(report, Diagnostic::sum)
        .help("make what it is worked out from larger, or what is taken off smaller")
}
