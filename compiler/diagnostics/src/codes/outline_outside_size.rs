//! A point of an outline outside the width or drop of its panel.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// A point of an outline outside the width or drop of its panel.
pub const CODE: Code = Code {
    slug: "outline-outside-size",
    severity: Severity::Error,
    page: "\
A point of the outline lies outside the panel: below its drop, above its heading line, beyond its
side edge or across its fold.

The drop and the width are what the window was measured for. A panel that goes beyond them is longer
or wider than it says, and its cloth is cut too small.

Move the point inside, or order the panel larger.
",
    failing: one_window! {
        items: "\
outline pointed whole {
    from (0, drop)
    to (width / 2, drop + 1 in)
    to (width, drop)
    up to heading
}
",
        panel: ["finished width: 40 in", "drop: 14 in", "outline: pointed"],
    },
    mend: one_window! {
        items: "\
outline pointed whole {
    from (0, drop - 1 in)
    to (width / 2, drop)
    to (width, drop - 1 in)
    up to heading
}
",
        panel: ["finished width: 40 in", "drop: 14 in", "outline: pointed"],
    },
};

/// With the `step`, the outline of `panel` goes `amount` beyond the `side` ("past the edge"); `size` is
/// where the panel's size in that direction was written, and how large it is there.
pub fn outline_outside_size(
    panel: &str,
    (step, outline): (Span, Span),
    (amount, side): (&str, &str),
    size: Option<(Span, &str)>,
) -> Diagnostic {
    let report = CODE
        .report(format!("the outline of {panel} goes {amount} {side}"))
        .label(step, format!("{amount} {side}"));
    let report = match size {
        Some((size, limit)) => report.label(size, format!("the outline has {limit} there")),
        None => report,
    };
    report
        .label(outline, "the outline of this panel")
        .help(format!("move this point back by {amount}"))
}
