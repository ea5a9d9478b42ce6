//! An outline that meets the heading line in from the side edge.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "heading-not-whole",
    severity: Severity::Error,
    page: "\
The outline meets the heading line before it has reached the side edge, so that the heading would be
narrower than the panel.

The heading is what carries the panel: it is straight and as wide as the panel is, or the panel does
not cover what the row counts on.

Bring the outline out to the side edge before it goes up to the heading.
",
    failing: one_window! {
        items: "\
outline keystone whole {
    from (0, drop)
    to (width - 2 in, drop)
    up to heading
}
",
        panel: ["finished width: 40 in", "drop: 14 in", "outline: keystone"],
    },
    mend: one_window! {
        items: "\
outline keystone whole {
    from (0, drop)
    to (width - 2 in, drop)
    to (width, 3 in)
    up to heading
}
",
        panel: ["finished width: 40 in", "drop: 14 in", "outline: keystone"],
    },
};

/// An outline meets the heading line in from the edge, so that part of the heading is missing.
pub struct HeadingNotWhole {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// The step that meets the heading line.
    pub step: Span,
    /// Where the panel names its outline.
    pub outline: Span,
    /// How far from the edge it meets the line.
    pub amount: String,
    /// How wide the heading is.
    pub width: String,
    /// How much of that width the outline reaches along.
    pub reaches: String,
    /// Whether the step is the first one, so that the outline begins there.
    pub begins: bool,
}

impl From<HeadingNotWhole> for Diagnostic {
    fn from(told: HeadingNotWhole) -> Diagnostic {
        let HeadingNotWhole {
            panel,
            step,
            outline,
            amount,
            width,
            reaches,
            begins,
        } = told;
        let help = if begins {
            "begin at the left edge, such as `from (0, drop)`"
        } else {
            "go out to the side edge before this step, or end with `to (width, 0)`"
        };
        CODE.report(format!(
            "the outline of {panel} meets the heading line {amount} short of the edge"
        ))
        .label(step, format!("{amount} of the heading is missing"))
        .label(outline, "the outline of this panel")
        .sum(format!(
            "{width} of heading - {reaches} of outline = {amount} missing"
        ))
        .help(help)
    }
}
