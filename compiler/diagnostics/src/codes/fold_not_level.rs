//! A lining folded up from the face at a lower edge that is not level.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "fold-not-level",
    severity: Severity::Error,
    page: "\
The making method folds the lining up from the face, and the lower edge of the panel is not level.

Cloth folds along a straight line only, and the back half comes up straight behind the front one where
that line is level.

Give the panel a level lower edge, or line it with a piece of its own, of the same cloth if you like:
name the cloth of the face for the `lining`, and choose a making method that sews the two together.
",
    failing: Example::Text(
        "\
units inches
fabric sailcloth { width: 54 in }
rod pole { length: 40 in, diameter: 1 in }
make folded { seam: 1/2 in, lining: self }
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
        make: folded
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
make bagged { seam: 1/2 in, lining: as face }
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
        make: bagged
        face: sailcloth
        lining: sailcloth
    }
    row: front
}
window kitchen: valance { rod: pole }
",
    ),
};

/// A lining is folded up from its face at a lower edge that is not level.
pub struct FoldNotLevel<'a> {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// Where the lower edge leaves the level.
    pub edge: Span,
    /// Where the method folds the lining up, or else was named.
    pub lining: Span,
    /// How far the edge lies below the made-up top edge at its highest.
    pub highest: String,
    /// How far it lies below that at its lowest.
    pub lowest: String,
    /// How much the two differ.
    pub apart: String,
    /// The cloth of the face, which could line the panel.
    pub face: &'a str,
}

impl From<FoldNotLevel<'_>> for Diagnostic {
    fn from(told: FoldNotLevel<'_>) -> Diagnostic {
        let FoldNotLevel {
            panel,
            edge,
            lining,
            highest,
            lowest,
            apart,
            face,
        } = told;
        CODE.report(format!(
            "the lining of {panel} cannot be folded up from its face: its lower edge is not level"
        ))
        .label(edge, "the lower edge leaves the level here")
        .label(lining, "this method folds the lining up at the lower edge")
        .sum(format!(
            "{lowest} from the made-up top edge at its lowest - {highest} at its highest = {apart}"
        ))
        .help(format!(
            "give the panel a level lower edge, or choose a making method with a lining and write `lining: {face}`"
        ))
    }
}
