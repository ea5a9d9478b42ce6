//! An arc of an outline that no compass can draw.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "arc-impossible",
    severity: Severity::Error,
    page: "\
A step of the outline asks for an arc that does not exist.

A radius must be at least half the distance between the two ends, or the compass does not reach from
one to the other. A point that the arc passes through must not lie in line with both ends beyond one
of them. An arc that is level at one end cannot have its other end straight above or below.

Give a larger radius, or say by how much the arc is to bulge: every bulge can be drawn.
",
    failing: one_window! {
        items: "\
outline bowed whole {
    from (0, drop - 4 in)
    arc to (width, drop - 4 in) radius 19 in
    up to heading
}
",
        panel: ["finished width: 40 in", "drop: 14 in", "outline: bowed"],
    },
    mend: one_window! {
        items: "\
outline bowed whole {
    from (0, drop - 4 in)
    arc to (width, drop - 4 in) bulge 4 in
    up to heading
}
",
        panel: ["finished width: 40 in", "drop: 14 in", "outline: bowed"],
    },
};

/// There is no arc of the kind that a step of an outline asks for.
pub struct ArcImpossible {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// The `arc` that asks for it.
    pub step: Span,
    /// Where the panel names its outline.
    pub outline: Span,
    /// What stands in its way: "a radius of 19 in does not reach from end to end".
    pub why: String,
    /// What to do about it.
    pub help: String,
    /// The line of the sum that shows it, where there is one.
    pub sum: Option<String>,
}

impl From<ArcImpossible> for Diagnostic {
    fn from(told: ArcImpossible) -> Diagnostic {
        let ArcImpossible {
            panel,
            step,
            outline,
            why,
            help,
            sum,
        } = told;
        let diagnostic = CODE
            .report(format!(
                "there is no such arc for the outline of {panel}: {why}"
            ))
            .label(step, why)
            .label(outline, "the outline of this panel");
        sum.into_iter().fold(diagnostic, Diagnostic::sum).help(help)
    }
}
