//! A minus that could take away or stand for a value below zero.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "minus-unclear",
    severity: Severity::Error,
    page: "\
A minus sign stands between two values and touches the second. It could take the second from the
first, stand for a second value below zero, or mean \"to\", as in a range.

Each of these gives another size, so none is assumed.

To take away, write a blank on each side: `drop - 4 in`. For a value below zero, write brackets:
`bulge (-1/2 in)`. For a range, write `to`: `3 in to 4 in`.
",
    failing: Example::Text("fabric kelp-stripe { width: 56 in -2 in }\n"),
    mend: Example::Text("fabric kelp-stripe { width: 56 in - 2 in }\n"),
};

/// The minus at `minus` touches the value after it.
pub fn minus_unclear(minus: Span) -> Diagnostic {
    CODE.report("a minus sign can be read in two ways")
        .label(minus, "takes away, or is below zero?")
        .help("to take away, write a blank on each side: `drop - 4 in`")
        .help("for a value below zero, write brackets: `(-1/2 in)`")
        .help("for a range, write `to`: `3 in to 4 in`")
}
