//! A panel that fills and hangs in no row.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "fill-outside-row",
    severity: Severity::Error,
    page: "\
A panel that fills takes what the other panels of the row leave. This one is not in the row, so
there is nothing for it to fill and it has no width.

A panel that lies over the joins takes no length of the row: it is as wide as you say.

Give it a width, or name it in the row.
",
    failing: one_window! {
        panel: ["finished width: 20 in", "drop: 14 in"],
        others: "panel bridge like front { finished width: fill }",
        row: "front, front\n    over joins: bridge",
    },
    mend: one_window! {
        panel: ["finished width: 20 in", "drop: 14 in"],
        others: "panel bridge like front { finished width: 6 in }",
        row: "front, front\n    over joins: bridge",
    },
};

/// A panel fills and is not in the row, so that nothing tells it what to fill.
pub struct FillOutsideRow<'a> {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// The name that the maker gave it.
    pub name: &'a str,
    /// Where it says that it fills.
    pub width: Span,
    /// Where the row was written.
    pub row: Span,
    /// A width in the units of the house.
    pub example: &'static str,
}

impl From<FillOutsideRow<'_>> for Diagnostic {
    fn from(told: FillOutsideRow<'_>) -> Diagnostic {
        let FillOutsideRow {
            panel,
            name,
            width,
            row,
            example,
        } = told;
        CODE.report(format!("{panel} fills, and is not in the row"))
            .label(width, "there is nothing for it to fill")
            .label(row, "it is not named here")
            .help(format!(
                "write a width such as `finished width: {example}`, or name `{name}` in the row"
            ))
    }
}
