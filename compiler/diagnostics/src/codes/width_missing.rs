//! Pleats that leave something open which no width settles.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
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

/// A panel has no width, and its pleats leave open something that a width would settle.
pub struct WidthMissing {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// Where the panel was named.
    pub name: Span,
    /// Where the panel names its pleats.
    pub pleats: Span,
    /// A width in the units of the house.
    pub example: &'static str,
}

impl From<WidthMissing> for Diagnostic {
    fn from(told: WidthMissing) -> Diagnostic {
        let WidthMissing {
            panel,
            name,
            pleats,
            example,
        } = told;
        CODE.report(format!(
            "{panel} has no width, and its pleats leave something open"
        ))
        .label(name, "no width is given here")
        .label(pleats, "leaves open what a width would settle")
        .help(format!(
            "add a line such as `finished width: {example}` or `finished width: fill`"
        ))
    }
}
