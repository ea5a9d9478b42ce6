//! Mitred corners where an edge has no hem.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "mitre-without-hem",
    severity: Severity::Error,
    page: "\
A making method mitres its corners, and an edge that meets there has no hem.

In a mitre the hems of a side and of the lower edge are folded so that they meet in one slanting line.
Where one of the two is a seam, or a hem of no depth, there is nothing for the other to meet.

Give both `sides` and `lower edge` a hem, or leave `corners` out.
",
    failing: one_window! {
        make: "seam: 1/2 in, lining: none, lower edge: double hem 2 in, corners: mitred",
        panel: ["finished width: 40 in", "drop: 14 in"],
    },
    mend: one_window! {
        make: "seam: 1/2 in, lining: none, sides: hem 1 in, lower edge: double hem 2 in, corners: mitred",
        panel: ["finished width: 40 in", "drop: 14 in"],
    },
};

/// A making method mitres corners at an edge that has no hem.
pub struct MitreWithoutHem<'a> {
    /// What the making method is called.
    pub method: &'a str,
    /// The line that asks for the mitres.
    pub corners: Span,
    /// The edges without a hem: "sides".
    pub edges: &'a str,
    /// Where they were given something else, if they were.
    pub stated: Option<Span>,
    /// A hem that they could have.
    pub example: &'a str,
}

impl From<MitreWithoutHem<'_>> for Diagnostic {
    fn from(told: MitreWithoutHem<'_>) -> Diagnostic {
        let MitreWithoutHem {
            method,
            corners,
            edges,
            stated,
            example,
        } = told;
        CODE.report(format!(
            "the making method `{method}` mitres its corners, and there is no hem at the {edges}"
        ))
        .label(corners, "a mitre joins two hems")
        .label_if_known(stated, "this is no hem")
        .help(format!(
            "give the {edges} a hem, such as `{edges}: {example}`, or leave `corners` out"
        ))
    }
}
