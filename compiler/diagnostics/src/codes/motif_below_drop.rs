//! A motif below the lower edge of its panel.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// A motif below the lower edge of its panel.
pub const CODE: Code = Code {
    slug: "motif-below-drop",
    severity: Severity::Error,
    page: "\
The motif is to lie farther below the heading line than the panel is long.

There is no cloth at that place, so the print cannot be laid out by it.

Place the motif higher. Its distance is measured from the heading line, where the drop begins.
",
    failing: one_window! {
        fabric: "width: 54 in, repeat: 12 in along",
        panel: ["finished width: 40 in", "drop: 14 in"],
        window: "rod: pole, motif: centred on front, 20 in below heading",
    },
    mend: one_window! {
        fabric: "width: 54 in, repeat: 12 in along",
        panel: ["finished width: 40 in", "drop: 14 in"],
        window: "rod: pole, motif: centred on front, 8 in below heading",
    },
};

/// The `motif` on `panel` is to lie `below` the heading line, which is `amount` more than its `drop`.
pub fn motif_below_drop(
    panel: &str,
    (motif, below): (Span, &str),
    (drop, drop_text): (Span, &str),
    amount: &str,
) -> Diagnostic {
    CODE.report(format!(
        "the motif on {panel} lies {amount} below its lower edge"
    ))
    .label(motif, format!("{below} below the heading line"))
    .label(drop, format!("{drop_text} long"))
    .sum(format!(
        "{below} below the heading line - {drop_text} of drop = {amount} too low"
    ))
    .help(format!("write a distance of less than {drop_text}"))
}
