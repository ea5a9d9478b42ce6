//! A turning opening longer than the top edge it lies in.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// A turning opening longer than the top edge it lies in.
pub const CODE: Code = Code {
    slug: "opening-too-wide",
    severity: Severity::Error,
    page: "\
The gap that is left in the top seam to turn the panel right side out is as long as the seam or
longer.

Nothing would be left of the seam: the face and the lining would not hold together at the top.

Make the opening shorter than the panel is wide.
",
    failing: one_window! {
        make: "seam: 1/2 in, lining: none, turning opening: 45 in",
        panel: ["finished width: 40 in", "drop: 14 in"],
    },
    mend: one_window! {
        make: "seam: 1/2 in, lining: none, turning opening: 6 in",
        panel: ["finished width: 40 in", "drop: 14 in"],
    },
};

/// The turning `opening` of `panel` does not fit in its top `edge`.
pub fn opening_too_wide(
    panel: &str,
    (opening, opening_text): (Span, &str),
    (width, edge): (Span, &str),
) -> Diagnostic {
    CODE.report(format!(
        "the turning opening of {panel} is {opening_text}, and its top edge {edge}"
    ))
    .label(opening, format!("{opening_text} left open"))
    .label(width, format!("{edge} at the top"))
    .sum(format!(
        "{edge} of top edge - {opening_text} left open: nothing is left of the seam"
    ))
    .help(format!("write a turning opening of less than {edge}"))
}
