//! A mitre at a corner that is not square.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
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

/// Hems are to be mitred where the lower edge does not meet a side at a right angle.
pub struct MitreNotSquare {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// Where the lower edge meets the side.
    pub edge: Span,
    /// Where the method mitres the corners, or else was named.
    pub corners: Span,
    /// How the edge goes there.
    pub sum: String,
}

impl From<MitreNotSquare> for Diagnostic {
    fn from(told: MitreNotSquare) -> Diagnostic {
        let MitreNotSquare {
            panel,
            edge,
            corners,
            sum,
        } = told;
        CODE.report(format!(
            "the hems of {panel} cannot be mitred: its lower edge does not meet its sides at a right angle"
        ))
        .label(edge, "the lower edge is not level at the side here")
        .label(corners, "a mitre wants a square corner")
        .sum(sum)
        .help("begin and end the lower edge level, or choose a making method without mitres")
    }
}
