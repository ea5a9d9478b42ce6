//! A hem whose raw edge is turned under by more than its depth.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "turn-deeper-than-hem",
    severity: Severity::Error,
    page: "\
A hem folded once has its raw edge turned under, and by more than the hem is deep.

What is turned under lies inside the hem. Deeper than the hem, it would come out beyond the edge.

Turn less under, make the hem deeper, or fold it twice by its whole depth: `double hem 1 in`.
",
    failing: one_window! {
        make: "seam: 1/2 in, lining: none, lower edge: hem 1 in, turn 2 in",
        panel: ["finished width: 40 in", "drop: 14 in"],
    },
    mend: one_window! {
        make: "seam: 1/2 in, lining: none, lower edge: hem 2 in, turn 1 in",
        panel: ["finished width: 40 in", "drop: 14 in"],
    },
};

/// More of a hem is to be turned under than the hem is deep.
pub struct TurnDeeperThanHem {
    /// The property that asks for the hem, after its colon.
    pub span: Span,
    /// How much is to be turned under.
    pub turn: String,
    /// How deep the hem is.
    pub depth: String,
    /// How much the turn is more.
    pub beyond: String,
}

impl From<TurnDeeperThanHem> for Diagnostic {
    fn from(told: TurnDeeperThanHem) -> Diagnostic {
        let TurnDeeperThanHem {
            span,
            turn,
            depth,
            beyond,
        } = told;
        CODE.report(format!(
            "the raw edge of this hem is turned under by {turn}, and the hem is {depth} deep"
        ))
        .label(span, "what is turned under does not lie within the hem")
        .sum(format!("{turn} - {depth} = {beyond} beyond the edge"))
        .help(format!(
            "write `turn {depth}` or less, or `double hem {depth}`"
        ))
    }
}
