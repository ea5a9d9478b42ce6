//! A tail as long as its panel.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// A tail as long as its panel.
pub const CODE: Code = Code {
    slug: "tail-shows",
    severity: Severity::Warning,
    page: "\
The tail runs down the back of the panel from the middle of the rod, and is as long as the panel in
front of it or longer.

Its end looks out below the lower edge.

Make the tail shorter than the drop.
",
    failing: one_window! {
        panel: ["finished width: 40 in", "drop: 14 in"],
        head: "over rod, tail 15 in",
    },
    mend: one_window! {
        panel: ["finished width: 40 in", "drop: 14 in"],
        head: "over rod, tail 4 in",
    },
};

/// The `tail` of `panel` begins `half` the rod lower than its `drop` and reaches `reached`, which is as
/// far down as the drop or farther.
pub fn tail_shows(
    panel: &str,
    (tail, tail_text): (Span, &str),
    (drop, drop_text): (Span, &str),
    (half, reached): (&str, &str),
) -> Diagnostic {
    CODE.report(format!("the tail of {panel} shows below its lower edge"))
        .label(tail, format!("{tail_text} down the back"))
        .label(drop, format!("{drop_text} down the front"))
        .sum(format!(
            "{half} for half the rod + {tail_text} of tail = {reached} down the back"
        ))
        .help("write a shorter tail, or a longer drop")
}
