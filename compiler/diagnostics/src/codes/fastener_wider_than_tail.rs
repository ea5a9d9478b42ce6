//! A fastener wider than the tail that carries it.

use crate::example::one_window;
use crate::{Code, Diagnostic, PlacedText, Severity};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "fastener-wider-than-tail",
    severity: Severity::Warning,
    page: "\
The strip of fastener at the end of the tail is wider than the tail is long, or wider than the panel
laps back over its board.

Part of it would lie on the curve of the rod or beside the board, where it does not hold, and
nothing is left to move the panel up or down when the hang is corrected.

Make the tail or the lap longer, or choose a narrower fastener.
",
    failing: one_window! {
        items: "heading folded { hang: over rod, tail: 1/2 in, fastener: hook-and-loop 3/4 in wide }\n",
        panel: ["finished width: 40 in", "drop: 14 in"],
        head: "folded",
    },
    mend: one_window! {
        items: "heading folded { hang: over rod, tail: 4 in, fastener: hook-and-loop 3/4 in wide }\n",
        panel: ["finished width: 40 in", "drop: 14 in"],
        head: "folded",
    },
};

/// The fastener of a panel is wider than the tail or lap that carries it.
pub struct FastenerWiderThanTail<'a> {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// What the fastener is called: "hook-and-loop".
    pub name: &'a str,
    /// How wide the fastener is, where the heading says so.
    pub width: PlacedText,
    /// What carries it: "tail" or "lap".
    pub carrier: &'static str,
    /// How long the tail or lap is, where the heading says so.
    pub length: PlacedText,
    /// How much the fastener is wider.
    pub amount: String,
}

impl From<FastenerWiderThanTail<'_>> for Diagnostic {
    fn from(told: FastenerWiderThanTail<'_>) -> Diagnostic {
        let FastenerWiderThanTail {
            panel,
            name,
            width,
            carrier,
            length,
            amount,
        } = told;
        CODE.report(format!(
            "the {name} of {panel} is {width} wide, and its {carrier} {length} long"
        ))
        .label(width.span, format!("{width} wide"))
        .label(length.span, format!("{length} long"))
        .sum(format!(
            "{width} wide - {length} of {carrier} = {amount} too wide"
        ))
        .help(format!(
            "write a {carrier} of more than {width}, or choose a narrower fastener"
        ))
    }
}
