//! A mitre at a corner that is not square.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// A mitre at a corner that is not square.
pub const CODE: Code = Code {
    slug: "mitre-not-square",
    severity: Severity::Error,
    page: "\
A making method mitres its corners, and a side of the panel does not meet its lower edge at a right
angle: the lower edge slants or curves there, or there is no side.

The line of a mitre is found from hems that run straight across and straight down. At another corner
the two hems, folded on it, do not meet.

Begin the lower edge level, or choose a making method without mitres.
",
    failing: Example::Text(
        "\
units inches
fabric sailcloth { width: 54 in }
rod pole { length: 40 in, diameter: 1 in }
make mitred { seam: 1/2 in, lining: none, sides: hem 1 in, lower edge: hem 2 in, corners: mitred }
outline slanting whole {
    from (0, drop - 2 in)
    to (width, drop)
    up to heading
}
treatment valance {
    panel front {
        finished width: 40 in
        drop: 14 in
        outline: slanting
        head: over rod, tail 4 in
        make: mitred
        face: sailcloth
    }
    row: front
}
window kitchen: valance { rod: pole }
",
    ),
    mend: Example::Text(
        "\
units inches
fabric sailcloth { width: 54 in }
rod pole { length: 40 in, diameter: 1 in }
make mitred { seam: 1/2 in, lining: none, sides: hem 1 in, lower edge: hem 2 in, corners: mitred }
outline slanting whole {
    from (0, drop - 2 in)
    to (4 in, drop - 2 in)
    to (width - 4 in, drop)
    to (width, drop)
    up to heading
}
treatment valance {
    panel front {
        finished width: 40 in
        drop: 14 in
        outline: slanting
        head: over rod, tail 4 in
        make: mitred
        face: sailcloth
    }
    row: front
}
window kitchen: valance { rod: pole }
",
    ),
};

/// The method of `panel` mitres its `corners`, and the lower edge drawn at `edge` does not begin or
/// end square to a side: `sum` says how it goes.
pub fn mitre_not_square(panel: &str, edge: Span, corners: Span, sum: &str) -> Diagnostic {
    CODE.report(format!(
        "the hems of {panel} cannot be mitred: its lower edge does not meet its sides at a right angle"
    ))
    .label(edge, "the lower edge is not level at the side here")
    .label(corners, "a mitre wants a square corner")
    .sum(sum)
    .help("begin and end the lower edge level, or choose a making method without mitres")
}
