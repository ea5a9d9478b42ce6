//! A hem whose raw edge is turned under by more than its depth.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// A hem whose raw edge is turned under by more than its depth.
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

/// The hem at `span` is `depth` deep and its raw edge is to be turned under by `turn`, `beyond` more.
pub fn turn_deeper_than_hem(span: Span, turn: &str, depth: &str, beyond: &str) -> Diagnostic {
    CODE.report(format!(
        "the raw edge of this hem is turned under by {turn}, and the hem is {depth} deep"
    ))
    .label(span, "what is turned under does not lie within the hem")
    .sum(format!("{turn} - {depth} = {beyond} beyond the edge"))
    .help(format!(
        "write `turn {depth}` or less, or `double hem {depth}`"
    ))
}
