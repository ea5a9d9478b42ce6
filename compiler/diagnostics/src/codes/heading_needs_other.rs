//! A heading for a rod on a board, or the other way round.

use crate::example::one_window;
use crate::{Code, Diagnostic, PlacedText, Severity};

/// Its page for `pelmet explain`, with an example and the mend.
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

/// A heading for a rod hangs from a board, or one for a board from a rod.
pub struct HeadingNeedsOther {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// What the heading is made for: "rod" or "board".
    pub needs: PlacedText,
    /// What the window hangs from.
    pub has: PlacedText,
}

impl From<HeadingNeedsOther> for Diagnostic {
    fn from(told: HeadingNeedsOther) -> Diagnostic {
        let HeadingNeedsOther { panel, needs, has } = told;
        let example = if has.text == "board" {
            "head: on board"
        } else {
            "head: over rod, tail 4 in"
        };
        CODE.report(format!(
            "the heading of {panel} needs a {needs}, and the window has a {has}"
        ))
        .label(needs.span, format!("made for a {needs}"))
        .label(has.span, format!("hangs from a {has}"))
        .help(format!(
            "write a heading for a {has}, such as `{example}`, or give the window a {needs}"
        ))
    }
}
