//! A panel of which no width is known.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "panel-without-width",
    severity: Severity::Error,
    page: "\
Nothing says how wide the panel is: it has no finished, flat or cut width and does not fill the row.

Every piece is cut by its width, and the row cannot be added up without it.

Give it one width; the pleats or the fullness give the others.
",
    failing: one_window! {
        panel: ["drop: 14 in"],
    },
    mend: one_window! {
        panel: ["finished width: 40 in", "drop: 14 in"],
    },
};

/// Nothing gives the width of a panel.
pub struct PanelWithoutWidth {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// Where the panel was named.
    pub name: Span,
    /// A width in the units of the house.
    pub example: &'static str,
}

impl From<PanelWithoutWidth> for Diagnostic {
    fn from(told: PanelWithoutWidth) -> Diagnostic {
        let PanelWithoutWidth {
            panel,
            name,
            example,
        } = told;
        CODE.report(format!("{panel} has no width"))
            .label(name, "a width is missing here")
            .help(format!(
                "add a line such as `finished width: {example}` or `finished width: fill`"
            ))
    }
}
