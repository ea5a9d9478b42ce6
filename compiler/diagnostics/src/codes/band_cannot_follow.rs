//! A band along an edge that it cannot follow turn by turn.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "band-cannot-follow",
    severity: Severity::Error,
    page: "\
The inner line of a band is the edge moved in by the depth of the band, with a corner for every corner.
At a turn as sharp as this one the corner would lie so far in that the band could not be sewn.

Open the turn, or leave the band away from that edge.
",
    failing: Example::Text(
        "\
units inches
fabric sailcloth { width: 54 in }
fabric rust { width: 54 in }
rod pole { length: 40 in, diameter: 1 in }
make banded { seam: 1/2 in, lining: none, band: 1 in at lower edge }
outline split half {
    from (0, drop - 8 in)
    to (1 in, drop)
    to (width, drop)
    up to heading
}
treatment valance {
    panel front {
        finished width: 40 in
        drop: 14 in
        outline: split
        head: over rod, tail 4 in
        make: banded
        face: sailcloth
        band: rust
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
fabric rust { width: 54 in }
rod pole { length: 40 in, diameter: 1 in }
make banded { seam: 1/2 in, lining: none, band: 1 in at lower edge }
outline split half {
    from (0, drop - 4 in)
    to (6 in, drop)
    to (width, drop)
    up to heading
}
treatment valance {
    panel front {
        finished width: 40 in
        drop: 14 in
        outline: split
        head: over rod, tail 4 in
        make: banded
        face: sailcloth
        band: rust
    }
    row: front
}
window kitchen: valance { rod: pole }
",
    ),
};

/// An outline turns too sharply for a band to follow it.
pub struct BandCannotFollow {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// Where the method orders the band, or else was named.
    pub band: Span,
    /// Where the outline turns.
    pub edge: Span,
}

impl From<BandCannotFollow> for Diagnostic {
    fn from(told: BandCannotFollow) -> Diagnostic {
        let BandCannotFollow { panel, band, edge } = told;
        CODE.report(format!(
            "the band of {panel} cannot follow its outline: a turn is too sharp for it"
        ))
        .label(band, "this band follows the outline")
        .label(edge, "the outline turns too sharply")
        .help("open the turn, or leave the band away from that edge")
    }
}
