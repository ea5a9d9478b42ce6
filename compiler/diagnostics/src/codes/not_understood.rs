//! A line that is no property, no item and no step.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "not-understood",
    severity: Severity::Error,
    page: "\
The line cannot be read as a property (`drop: 17 in`), as an item (`fabric kelp-stripe { … }`) or as a
step (`knife 2 in toward centre`).

Only this line is left out; the lines around it are read, so that their mistakes are told too.

Compare it with a line of its kind that works. A note for yourself begins with `#`.
",
    failing: Example::Text("\
fabric kelp-stripe {
    width: 54 in
    / 2 in
}
"),
    mend: Example::Text("\
fabric kelp-stripe {
    width: 54 in / 2
}
"),
};

/// The line at `span` cannot be read.
pub fn not_understood(span: Span) -> Diagnostic {
    CODE.report("a line is no property, no item and no step")
        .label(span, "not understood")
        .help("write a property as `drop: 17 in`, an item as `rod brass-pole { … }`, one on a line")
        .help("begin a note for yourself with `#`")
}
