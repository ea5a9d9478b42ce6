//! An overlap as wide as a panel it lies on.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// An overlap as wide as a panel it lies on.
pub const CODE: Code = Code {
    slug: "overlap-too-wide",
    severity: Severity::Error,
    page: "\
Neighbours in the row overlap by as much as one of them is wide, or more.

That panel would disappear behind its neighbours, or reach past the far side of them.

Make the overlap smaller, or the panel wider.
",
    failing: one_window! {
        panel: ["finished width: fill", "drop: 14 in"],
        others: "panel strip like front { finished width: 3 in }",
        row: "front, strip, front\n    overlap: 4 in",
    },
    mend: one_window! {
        panel: ["finished width: fill", "drop: 14 in"],
        others: "panel strip like front { finished width: 3 in }",
        row: "front, strip, front\n    overlap: 1 in",
    },
};

/// The `overlap` of the row is not less than the width of `panel`, whose finished width is `finished`.
pub fn overlap_too_wide(
    panel: &str,
    (overlap, overlap_text): (Span, &str),
    (width, finished): (Span, &str),
) -> Diagnostic {
    CODE.report(format!(
        "an overlap of {overlap_text} leaves nothing of {panel}"
    ))
    .label(overlap, format!("{overlap_text} over each neighbour"))
    .label(width, format!("{finished} finished"))
    .sum(format!(
        "{finished} finished - {overlap_text} of overlap: nothing is left to be seen"
    ))
    .help(format!(
        "write an overlap of less than {finished}, or make the panel wider"
    ))
}
