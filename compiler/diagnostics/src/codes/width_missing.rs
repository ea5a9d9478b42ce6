//! Pleats that leave something open which no width settles.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// Pleats that leave something open which no width settles.
pub const CODE: Code = Code {
    slug: "width-missing",
    severity: Severity::Error,
    page: "\
The pleat rule leaves something open, such as how many pleats there are, and the panel has no width
that would settle it.

Every number of pleats gives another width, so there is nothing to cut by.

Give the panel a finished width, let it fill what the row leaves, or say in the rule how often:
`repeat 6 times: ...`.
",
    failing: one_window! {
        fabric: "width: 118 in",
        items: "\
pleats even {
    margin 2 in
    repeat: box 1 1/2 in, space 3 in to 4 in
    margin 2 in
}
",
        panel: ["drop: 14 in", "pleats: even"],
    },
    mend: one_window! {
        fabric: "width: 118 in",
        items: "\
pleats even {
    margin 2 in
    repeat: box 1 1/2 in, space 3 in to 4 in
    margin 2 in
}
",
        panel: ["finished width: 40 in", "drop: 14 in", "pleats: even"],
    },
};

/// The pleats of `panel` leave something open and it has no width.
pub fn width_missing(panel: &str, (name, pleats): (Span, Span), example: &str) -> Diagnostic {
    CODE.report(format!(
        "{panel} has no width, and its pleats leave something open"
    ))
    .label(name, "no width is given here")
    .label(pleats, "leaves open what a width would settle")
    .help(format!(
        "add a line such as `finished width: {example}` or `finished width: fill`"
    ))
}
