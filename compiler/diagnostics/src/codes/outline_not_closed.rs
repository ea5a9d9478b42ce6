//! An outline that ends before it reaches the heading line.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "outline-not-closed",
    severity: Severity::Error,
    page: "\
An outline goes round the panel up to the heading line, where the heading begins. This one ends
below it.

The last stretch is not said, and it is not guessed: straight up, slanting and stepped are different
panels.

Let the last step reach the heading line: `up to heading`, or `to (width, 0)`.
",
    failing: one_window! {
        items: "\
outline plain-shape whole {
    from (0, drop)
    to (width, drop)
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

/// An outline ends below the heading line.
pub struct OutlineNotClosed {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// Its last step, which should end on the heading line.
    pub step: Span,
    /// Where the panel names its outline.
    pub outline: Span,
    /// How far it ends from where its x begins.
    pub across: String,
    /// How far below the heading line it ends.
    pub down: String,
}

impl From<OutlineNotClosed> for Diagnostic {
    fn from(told: OutlineNotClosed) -> Diagnostic {
        let OutlineNotClosed {
            panel,
            step,
            outline,
            across,
            down,
        } = told;
        CODE.report(format!(
            "the outline of {panel} ends {down} below the heading line"
        ))
        .label(step, format!("ends here, at ({across}, {down})"))
        .label(outline, "the outline of this panel")
        .help("end it with `up to heading`, or with `to (width, 0)`")
    }
}
