//! A curve too tight for its seam allowance.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "curve-too-tight",
    severity: Severity::Error,
    page: "\
A concave curve has a smaller radius than its seam allowance is wide.

The cutting line runs inside the curve at the width of the allowance. Where the radius is smaller
than that, it would have to run past the middle of the curve and back: there is no such line to cut,
and no cloth to sew to.

Make the curve wider, or choose a making method with a narrower seam.
",
    failing: one_window! {
        items: "\
outline bitten whole {
    from (0, drop)
    to (width / 2 - 3/8 in, drop)
    arc to (width / 2 + 3/8 in, drop) bulge 3/8 in inward
    to (width, drop)
    up to heading
}
",
        panel: ["finished width: 40 in", "drop: 14 in", "outline: bitten"],
    },
    mend: one_window! {
        items: "\
outline bitten whole {
    from (0, drop)
    to (width / 2 - 2 in, drop)
    arc to (width / 2 + 2 in, drop) bulge 2 in inward
    to (width, drop)
    up to heading
}
",
        panel: ["finished width: 40 in", "drop: 14 in", "outline: bitten"],
    },
};

/// A curve of an outline bends more tightly than the seam allowance can follow.
pub struct CurveTooTight {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// The step that draws the curve.
    pub step: Span,
    /// Where the panel names its outline.
    pub outline: Span,
    /// Where the panel names its making method.
    pub make: Span,
    /// The radius where the curve is tightest, or a little more.
    pub radius: String,
    /// The radius that the allowance needs more than.
    pub needed: String,
}

impl From<CurveTooTight> for Diagnostic {
    fn from(told: CurveTooTight) -> Diagnostic {
        let CurveTooTight {
            panel,
            step,
            outline,
            make,
            radius,
            needed,
        } = told;
        CODE.report(format!(
            "in the outline of {panel}, a curve is too tight for the seam allowance"
        ))
        .label(step, format!("a radius of {radius} where it is tightest"))
        .label(make, format!("needs more than {needed} there"))
        .label(outline, "the outline of this panel")
        .sum(format!(
            "{radius} of radius - {needed} of allowance: no curve is left to cut along"
        ))
        .help(format!(
            "give it a radius of more than {needed}, or the making method a narrower seam"
        ))
    }
}
