//! An outline whose lowest point stays short of the drop.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// An outline whose lowest point stays short of the drop.
pub const CODE: Code = Code {
    slug: "outline-short-of-drop",
    severity: Severity::Error,
    page: "\
No point of the outline reaches the drop that is ordered.

The drop is the finished length the client was told. The panel would hang shorter.

Let the lowest point of the outline lie at `drop`, or order the drop that the outline has.
",
    failing: one_window! {
        items: "\
outline plain-shape whole {
    from (0, drop - 1 in)
    to (width, drop - 1 in)
    up to heading
}
",
        panel: ["finished width: 40 in", "drop: 14 in", "outline: plain-shape"],
    },
    mend: one_window! {
        items: "\
outline plain-shape whole {
    from (0, drop)
    to (width, drop)
    up to heading
}
",
        panel: ["finished width: 40 in", "drop: 14 in", "outline: plain-shape"],
    },
};

/// The outline of `panel` reaches down to `lowest`, which is `amount` less than its `drop`.
pub fn outline_short_of_drop(
    panel: &str,
    outline: Span,
    (drop, drop_text): (Span, &str),
    (lowest, amount): (&str, &str),
) -> Diagnostic {
    CODE.report(format!(
        "the outline of {panel} stays {amount} short of its drop"
    ))
    .label(outline, format!("reaches {lowest} down"))
    .label(drop, format!("a drop of {drop_text}"))
    .sum(format!(
        "{drop_text} of drop - {lowest} of outline = {amount} too short"
    ))
    .help("let the lowest point of the outline lie at `drop`")
}
