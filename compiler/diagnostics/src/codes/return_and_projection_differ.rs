//! Returns that are not as deep as the rod stands off the wall.

use crate::example::one_window;
use crate::{Code, Diagnostic, Fix, Severity, Span};

/// Returns that are not as deep as the rod stands off the wall.
pub const CODE: Code = Code {
    slug: "return-and-projection-differ",
    severity: Severity::Warning,
    page: "\
The return is the part of an end panel that turns back to the wall. The rod or board stands off the
wall by another length.

A return that is too short leaves a slit of light at the wall; one that is too long buckles at the
corner or stands out from it.

Make the returns as long as the projection of the rod or the depth of the board.
",
    failing: one_window! {
        rod: "length: 40 in, diameter: 1 in, projection: 3 in",
        panel: ["finished width: fill", "drop: 14 in"],
        row: "front\n    returns: 2 in",
    },
    mend: one_window! {
        rod: "length: 40 in, diameter: 1 in, projection: 3 in",
        panel: ["finished width: fill", "drop: 14 in"],
        row: "front\n    returns: 3 in",
    },
};

/// The returns of `window` are `returns_text` and its rod or board stands `projection` off the
/// wall; `to_write` is that length as it is written, where returns were written.
pub fn return_and_projection_differ(
    window: &str,
    (returns, returns_text): (Span, &str),
    (support, projection): (Span, &str),
    (amount, too_short): (&str, bool),
    to_write: Option<&str>,
) -> Diagnostic {
    let sum = if too_short {
        format!("{projection} off the wall - {returns_text} of return = {amount} too short")
    } else {
        format!("{returns_text} of return - {projection} off the wall = {amount} too long")
    };
    let report = CODE
        .report(format!(
            "the returns of {window} are {returns_text}, and it stands {projection} off the wall"
        ))
        .label(returns, format!("{returns_text} turned back"))
        .label(support, format!("{projection} off the wall"))
        .sum(sum);
    match to_write {
        Some(to_write) => report
            .help(format!("write `returns: {to_write}`"))
            .fix(Fix::replace(
                format!("make the returns {to_write}"),
                returns,
                to_write,
            )),
        None => report.help("make the returns as long as it stands off the wall"),
    }
}
