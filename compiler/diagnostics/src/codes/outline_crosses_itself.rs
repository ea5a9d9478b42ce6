//! An outline that crosses or touches itself.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "outline-crosses-itself",
    severity: Severity::Error,
    page: "\
Two edges of the outline cross or touch, so that part of the panel is a loop or hangs by a thread.

It cannot be cut in one piece and has no room for a seam allowance where the edges meet.

Move one of the two edges; often two points stand in the wrong order.
",
    failing: one_window! {
        items: "\
outline shelf whole {
    from (0, drop)
    to (24 in, drop - 6 in)
    to (16 in, drop - 6 in)
    to (width, drop)
    up to heading
}
",
        panel: ["finished width: 40 in", "drop: 14 in", "outline: shelf"],
    },
    mend: one_window! {
        items: "\
outline shelf whole {
    from (0, drop)
    to (16 in, drop - 6 in)
    to (24 in, drop - 6 in)
    to (width, drop)
    up to heading
}
",
        panel: ["finished width: 40 in", "drop: 14 in", "outline: shelf"],
    },
};

/// Two edges of an outline cross or touch.
pub struct OutlineCrossesItself {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// The step that draws the earlier of the two.
    pub first: Span,
    /// The step that draws the later one, which is told first.
    pub second: Span,
    /// Where the panel names its outline.
    pub outline: Span,
}

impl From<OutlineCrossesItself> for Diagnostic {
    fn from(told: OutlineCrossesItself) -> Diagnostic {
        let OutlineCrossesItself {
            panel,
            first,
            second,
            outline,
        } = told;
        CODE.report(format!("the outline of {panel} crosses itself"))
            .label(second, "this edge crosses or touches another")
            .label(first, "the edge it meets")
            .label(outline, "the outline of this panel")
            .help("move one of the two edges, or exchange two points that stand in the wrong order")
    }
}
