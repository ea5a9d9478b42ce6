//! An equals sign where a colon belongs.

use crate::{Code, Diagnostic, Example, Fix, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "equals-for-colon",
    severity: Severity::Error,
    page: "\
A property is written with a colon: `width: 54 in`. The line has `=`, and is read as if it had the
colon.

One way to write each thing keeps files of several hands alike.

Write the colon. In `expect` lines, and for what is taken when nothing is said, as in
`tide(width, step = 3 in)`, the `=` is right.
",
    failing: Example::Text("fabric kelp-stripe { width = 54 in }\n"),
    mend: Example::Text("fabric kelp-stripe { width: 54 in }\n"),
};

/// `equals` covers the sign, and the blanks before it if those are to go with it.
pub fn equals_for_colon(equals: Span) -> Diagnostic {
    CODE.report("a property is written with `:`, not with `=`")
        .label(equals, "`:` belongs here")
        .help("write `:`")
        .fix(Fix::replace("write `:`", equals, ":"))
}
