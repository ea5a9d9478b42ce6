//! An outline that does not begin with `from`, or begins twice.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "outline-not-started",
    severity: Severity::Error,
    page: "\
An outline is one line, drawn from its start to the heading. Its first step is `from` with the point
it starts at, and no other step is.

Without a start every other step has nowhere to go on from; with two, the shears would have to be
lifted, and the panel would be in two parts.

Begin the outline with `from`, such as `from (0, drop)` for the lower corner, and use `to` after
that.
",
    failing: one_window! {
        items: "\
outline plain-shape whole {
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

/// An outline does not begin with `from`, or begins a second time.
pub struct OutlineNotStarted {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// Its first step, or the one that begins again.
    pub step: Span,
    /// Where the panel names its outline.
    pub outline: Span,
    /// Whether it begins a second time.
    pub twice: bool,
}

impl From<OutlineNotStarted> for Diagnostic {
    fn from(told: OutlineNotStarted) -> Diagnostic {
        let OutlineNotStarted {
            panel,
            step,
            outline,
            twice,
        } = told;
        let (title, label, help) = if twice {
            (
                "begins twice",
                "begins again here",
                "write `to` for this `from`",
            )
        } else {
            (
                "does not begin with `from`",
                "there is nothing to go on from",
                "begin with a line such as `from (0, drop)`",
            )
        };
        CODE.report(format!("the outline of {panel} {title}"))
            .label(step, label)
            .label(outline, "the outline of this panel")
            .help(help)
    }
}
