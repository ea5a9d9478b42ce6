//! A fastener wider than the tail that carries it.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// A fastener wider than the tail that carries it.
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

/// The fastener of `panel`, called `name`, is wider than what carries it: the `carrier` ("tail",
/// "lap"), which is the `amount` shorter.
pub fn fastener_wider_than_tail(
    panel: &str,
    name: &str,
    (fastener, width): (Span, &str),
    (carrier, place, length): (&str, Span, &str),
    amount: &str,
) -> Diagnostic {
    CODE.report(format!(
        "the {name} of {panel} is {width} wide, and its {carrier} {length} long"
    ))
    .label(fastener, format!("{width} wide"))
    .label(place, format!("{length} long"))
    .sum(format!(
        "{width} wide - {length} of {carrier} = {amount} too wide"
    ))
    .help(format!(
        "write a {carrier} of more than {width}, or choose a narrower fastener"
    ))
}
