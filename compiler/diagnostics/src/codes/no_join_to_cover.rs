//! A panel over the joins of a row that has none.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "no-join-to-cover",
    severity: Severity::Error,
    page: "\
A panel is to lie over the joins, one over each, and the row has a single panel: there is no join.

The panel would not be made, and the window would hang without the piece it was designed with.

Hang two panels or more in the row, or name the panel in the row itself.
",
    failing: one_window! {
        panel: ["finished width: 40 in", "drop: 14 in"],
        others: "panel bridge like front { finished width: 6 in }",
        row: "front\n    over joins: bridge",
    },
    mend: one_window! {
        panel: ["finished width: 20 in", "drop: 14 in"],
        others: "panel bridge like front { finished width: 6 in }",
        row: "front, front\n    over joins: bridge",
    },
};

/// A panel is to lie over the joins of a row that has none.
pub struct NoJoinToCover {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// Where it was hung over the joins.
    pub over: Span,
    /// Where the row was written.
    pub row: Span,
}

impl From<NoJoinToCover> for Diagnostic {
    fn from(told: NoJoinToCover) -> Diagnostic {
        let NoJoinToCover { panel, over, row } = told;
        CODE.report(format!(
            "{panel} is to lie over joins, and the row has none"
        ))
        .label(over, "there is no join to lie over")
        .label(row, "one panel makes no join")
        .help("hang two panels or more in the row, or take `over joins` out")
    }
}
