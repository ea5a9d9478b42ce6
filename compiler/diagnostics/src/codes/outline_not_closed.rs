//! An outline that ends before it reaches the heading line.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// An outline that ends before it reaches the heading line.
pub const CODE: Code = Code {
    slug: "outline-not-closed",
    severity: Severity::Error,
    page: "\
An outline goes round the panel up to the heading line, where the heading begins. This one ends
below it.

The last stretch is not said, and it is not guessed: straight up, slanting and stepped are different
panels.

Let the last step reach the heading line: `up to heading`, or `to (width, 0)`.
",
    failing: one_window! {
        items: "\
outline plain-shape whole {
    from (0, drop)
    to (width, drop)
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

/// The outline of `panel` ends with the `step`, `across` from where its x begins and `down` from the
/// heading line.
pub fn outline_not_closed(
    panel: &str,
    (step, outline): (Span, Span),
    (across, down): (&str, &str),
) -> Diagnostic {
    CODE.report(format!(
        "the outline of {panel} ends {down} below the heading line"
    ))
    .label(step, format!("ends here, at ({across}, {down})"))
    .label(outline, "the outline of this panel")
    .help("end it with `up to heading`, or with `to (width, 0)`")
}
