//! A step of an outline that draws nothing.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "edge-without-length",
    severity: Severity::Error,
    page: "\
A step of the outline ends where it begins: the edge it draws has no length.

Usually a point stands there twice, or a measure that should make a step came out at nothing. Such
an edge has no direction, so no seam allowance can be laid beside it.

Take the step out, or give it the length that was meant.
",
    failing: one_window! {
        items: "\
outline plain-shape whole {
    from (0, drop)
    to (width, drop)
    to (width, drop)
    up to heading
}
",
        panel: ["finished width: 40 in", "drop: 14 in", "outline: plain-shape"],
    },
    mend: one_window! {
        items: "\
outline plain-shape whole {
    from (0, drop)
    to (width, drop)
    up to heading
}
",
        panel: ["finished width: 40 in", "drop: 14 in", "outline: plain-shape"],
    },
};

/// An edge of an outline ends where it begins.
pub struct EdgeWithoutLength {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// The step that ends where it begins.
    pub step: Span,
    /// Where the panel names its outline.
    pub outline: Span,
}

impl From<EdgeWithoutLength> for Diagnostic {
    fn from(told: EdgeWithoutLength) -> Diagnostic {
        let EdgeWithoutLength {
            panel,
            step,
            outline,
        } = told;
        CODE.report(format!("an edge in the outline of {panel} has no length"))
            .label(step, "ends where it begins")
            .label(outline, "the outline of this panel")
            .help("take this step out, or give it a length")
    }
}
