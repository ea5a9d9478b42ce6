//! More pleats than the limit.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "too-many-pleats",
    severity: Severity::Error,
    page: "\
The pleat rule asks for more pleats than one panel may have.

No panel is pleated so often. The limit is there so that a slip, such as a depth in millimetres that
was meant in centimetres, is told and not worked out.

Ask for fewer pleats, or deeper ones.
",
    failing: one_window! {
        fabric: "width: 118 in",
        items: "\
pleats fine {
    margin 2 in
    repeat 190000 times: knife 1/2 in toward left, space 2 in
    margin 2 in
}
",
        panel: ["drop: 14 in", "pleats: fine"],
    },
    mend: one_window! {
        fabric: "width: 118 in",
        items: "\
pleats fine {
    margin 2 in
    repeat 19 times: knife 1/2 in toward left, space 2 in
    margin 2 in
}
",
        panel: ["drop: 14 in", "pleats: fine"],
    },
};

/// A step asks for more pleats than are worked out.
pub struct TooManyPleats {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// The step that asks for them.
    pub step: Span,
    /// Where the panel names its pleats.
    pub pleats: Span,
    /// The most pleats that a panel may have.
    pub limit: u32,
}

impl From<TooManyPleats> for Diagnostic {
    fn from(told: TooManyPleats) -> Diagnostic {
        let TooManyPleats {
            panel,
            step,
            pleats,
            limit,
        } = told;
        CODE.report(format!("{panel} would have more than {limit} pleats"))
            .label(step, format!("more than {limit} pleats"))
            .label(pleats, "the pleats of this panel")
            .help("ask for fewer pleats, or for deeper ones with more plain cloth between")
    }
}
