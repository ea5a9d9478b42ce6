//! A panel that hangs nowhere.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "panel-not-hung",
    severity: Severity::Warning,
    page: "\
A panel of the treatment is neither in the row nor over its joins. It is not made, and no cloth is
bought for it.

Often a name in the row is another than the one that was meant.

Name the panel in the row or over the joins, or take it out.
",
    failing: one_window! {
        panel: ["finished width: 40 in", "drop: 14 in"],
        others: "panel back like front { drop: 20 in }",
    },
    mend: one_window! {
        panel: ["finished width: 20 in", "drop: 14 in"],
        others: "panel back like front { drop: 20 in }",
        row: "front, back",
    },
};

/// A panel is neither in the row nor over its joins.
pub struct PanelNotHung<'a> {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// The name that the maker gave it.
    pub name: &'a str,
    /// Where that was written.
    pub place: Span,
    /// Where the row was written.
    pub row: Span,
}

impl From<PanelNotHung<'_>> for Diagnostic {
    fn from(told: PanelNotHung<'_>) -> Diagnostic {
        let PanelNotHung {
            panel,
            name,
            place,
            row,
        } = told;
        CODE.report(format!("{panel} hangs nowhere"))
            .label(place, "this panel is not made")
            .label(row, "it is not named here")
            .help(format!(
                "name `{name}` in the row or over the joins, or take the panel out"
            ))
    }
}
