//! A filling panel whose share lies outside its limits.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// A filling panel whose share lies outside its limits.
pub const CODE: Code = Code {
    slug: "fill-out-of-range",
    severity: Severity::Error,
    page: "\
Panels that fill share equally what the other panels leave. Here the share lies outside the limits
that the panel states.

The limits are there because a panel looks wrong, or its pleats do not fall, when it is much wider
or narrower than it was designed.

Hang more or fewer panels, change the panels that do not fill, or widen the limits.
",
    failing: one_window! {
        panel: ["finished width: fill 20 in to 30 in", "drop: 14 in"],
    },
    mend: one_window! {
        panel: ["finished width: fill 20 in to 30 in", "drop: 14 in"],
        row: "front, front",
    },
};

/// Of the length `to_cover` the other panels take `taken` and leave `left`, of which `share` falls to
/// `panel`; that is outside its `bound` ("at most 30 in"), and either `too_wide`,
/// with the share as it is written, or too narrow.
pub fn fill_out_of_range(
    panel: &str,
    (width, row, support): (Span, Span, Span),
    (to_cover, taken, left): (&str, &str, &str),
    (share, bound): (&str, &str),
    too_wide: Option<&str>,
) -> Diagnostic {
    let help = match too_wide {
        Some(to_write) => format!("hang one panel more, or write `fill at most {to_write}`"),
        None => String::from("hang one panel fewer, or make the other panels narrower"),
    };
    CODE.report(format!(
        "the row leaves {share} for {panel}, which is to be {bound}"
    ))
    .label(width, format!("{bound}, and its share is {share}"))
    .label(row, format!("the other panels take {taken}"))
    .label(support, format!("{to_cover} to cover"))
    .sum(format!(
        "{to_cover} to cover - {taken} for the others = {left} left"
    ))
    .sum(format!("the share of one panel that fills: {share}"))
    .help(help)
}
