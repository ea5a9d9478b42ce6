//! A notch or neck that leaves no room for its allowance.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "too-narrow-for-allowance",
    severity: Severity::Error,
    page: "\
A notch is narrower than the two allowances that lie in it, or an edge is too short for the
allowances at its two ends. An allowance is a seam or a hem.

The allowances run into each other: there is no cloth left to sew to, and the corners cannot be
turned.

Make the notch wider or the edge longer, or choose a making method with narrower allowances.
",
    failing: one_window! {
        items: "\
outline notched whole {
    from (0, drop)
    notch at (width / 2, drop), 1/2 in wide, 3 in deep, square
    to (width, drop)
    up to heading
}
",
        panel: ["finished width: 40 in", "drop: 14 in", "outline: notched"],
    },
    mend: one_window! {
        items: "\
outline notched whole {
    from (0, drop)
    notch at (width / 2, drop), 2 in wide, 3 in deep, square
    to (width, drop)
    up to heading
}
",
        panel: ["finished width: 40 in", "drop: 14 in", "outline: notched"],
    },
};

/// A notch or neck of an outline is narrower than the seam allowances on its two sides.
pub struct TooNarrowForAllowance {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// The step whose edge the allowances leave nothing of.
    pub step: Span,
    /// Where the panel names its outline.
    pub outline: Span,
    /// Where the panel names its making method.
    pub make: Span,
    /// How wide the notch or neck is there.
    pub width: String,
    /// How wide the allowances need it.
    pub needed: String,
    /// By how much that is too narrow.
    pub missing: String,
}

impl From<TooNarrowForAllowance> for Diagnostic {
    fn from(told: TooNarrowForAllowance) -> Diagnostic {
        let TooNarrowForAllowance {
            panel,
            step,
            outline,
            make,
            width,
            needed,
            missing,
        } = told;
        CODE.report(format!(
            "in the outline of {panel}, {width} is too narrow for the allowance"
        ))
        .label(step, format!("{width} wide"))
        .label(make, format!("needs {needed} there"))
        .label(outline, "the outline of this panel")
        .sum(format!(
            "{needed} for the allowances - {width} = {missing} missing"
        ))
        .help(format!(
            "make it at least {needed} wide, or the allowance of the making method narrower"
        ))
    }
}
