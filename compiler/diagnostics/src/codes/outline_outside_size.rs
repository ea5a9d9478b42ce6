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

/// With the `step`, the outline of `panel` goes `amount` beyond the `side` ("past the edge"): it
/// `reaches` so far where the `limit` is its panel's; `size` is where that was written, if it was.
pub fn outline_outside_size(
    panel: &str,
    (step, outline): (Span, Span),
    (amount, side): (&str, &str),
    (reaches, limit): (&str, &str),
    size: Option<Span>,
) -> Diagnostic {
    let report = CODE
        .report(format!("the outline of {panel} goes {amount} {side}"))
        .label(step, format!("{amount} {side}"));
    let report = match size {
        Some(size) => report
            .label(size, format!("the outline has {limit} there"))
            .sum(format!(
                "{reaches} of outline - {limit} of panel = {amount} {side}"
            )),
        None => report.sum(format!(
            "the panel begins at {limit} there, and this point lies at {reaches}"
        )),
    };
    report
        .label(outline, "the outline of this panel")
        .help(format!("move this point back by {amount}"))
}
