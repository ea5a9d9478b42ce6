//! A heading for a rod on a board, or the other way round.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// A heading for a rod on a board, or the other way round.
pub const CODE: Code = Code {
    slug: "heading-needs-other",
    severity: Severity::Error,
    page: "\
The heading of the panel is made for a rod and the window has a board, or the other way round.

A heading over a rod is as long as half the rod is round and its tail; one on a board is as long as
the board is deep. Made for the other, it is too long or too short and has nothing to hold it.

Choose another heading, or hang the treatment from what the heading needs.
",
    failing: one_window! {
        panel: ["finished width: 40 in", "drop: 14 in"],
        head: "on board",
    },
    mend: one_window! {
        panel: ["finished width: 40 in", "drop: 14 in"],
        head: "over rod, tail 4 in",
    },
};

/// The heading of `panel` needs a rod or board (`needs`), and the window has the other.
pub fn heading_needs_other(
    panel: &str,
    (head, needs): (Span, &str),
    (support, has): (Span, &str),
) -> Diagnostic {
    let example = if has == "board" {
        "head: on board"
    } else {
        "head: over rod, tail 4 in"
    };
    CODE.report(format!(
        "the heading of {panel} needs a {needs}, and the window has a {has}"
    ))
    .label(head, format!("made for a {needs}"))
    .label(support, format!("hangs from a {has}"))
    .help(format!(
        "write a heading for a {has}, such as `{example}`, or give the window a {needs}"
    ))
}
