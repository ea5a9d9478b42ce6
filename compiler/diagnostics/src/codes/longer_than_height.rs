//! A panel longer than its rod or board is high.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// A panel longer than its rod or board is high.
pub const CODE: Code = Code {
    slug: "longer-than-height",
    severity: Severity::Error,
    page: "\
The drop of the panel is more than the height of the rod or board above the floor.

The panel would lie on the floor, where it is trodden on, gathers dust and pulls out of its folds.

Make the drop shorter than the height, or correct the height if it was measured to another place.
",
    failing: one_window! {
        panel: ["finished width: 40 in", "drop: 90 in"],
        window: "rod: pole, top at 84 in",
    },
    mend: one_window! {
        panel: ["finished width: 40 in", "drop: 83 in"],
        window: "rod: pole, top at 84 in",
    },
};

/// The `drop` of `panel` is `amount` more than the height of its rod or board, which
/// is written `to_write`.
pub fn longer_than_height(
    panel: &str,
    (drop, drop_text): (Span, &str),
    (support, height): (Span, &str),
    (amount, to_write): (&str, &str),
) -> Diagnostic {
    CODE.report(format!(
        "{panel} is {amount} longer than it hangs above the floor"
    ))
    .label(drop, format!("{drop_text} long"))
    .label(support, format!("{height} above the floor"))
    .sum(format!(
        "{drop_text} of drop - {height} of height = {amount} on the floor"
    ))
    .help(format!("{panel} needs a drop of at most {to_write}"))
}
