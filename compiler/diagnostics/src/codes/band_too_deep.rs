//! Bands with no room for one another or for the edge they follow.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "band-too-deep",
    severity: Severity::Error,
    page: "\
A band lies along an edge and reaches inward. Here there is less cloth than the bands take: two bands
meet in the middle of the panel, or an edge is shorter, or a curve tighter, than a band of that depth
can follow.

Make the band shallower, or choose an outline with longer edges and wider curves.
",
    failing: one_window! {
        make: "seam: 1/2 in, lining: none, band: 21 in at sides",
        items: "fabric rust { width: 54 in }\n",
        panel: ["finished width: 40 in", "drop: 14 in", "band: rust"],
    },
    mend: one_window! {
        make: "seam: 1/2 in, lining: none, band: 2 in at sides",
        items: "fabric rust { width: 54 in }\n",
        panel: ["finished width: 40 in", "drop: 14 in", "band: rust"],
    },
};

/// The bands of a panel do not fit between the ends of an edge, or into a curve.
pub struct BandTooDeep {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// Where the method orders the bands, or else was named.
    pub band: Span,
    /// The step that draws the edge.
    pub edge: Span,
    /// How much room the bands need.
    pub needed: String,
    /// How much room the edge gives.
    pub room: String,
    /// By how much that is too little.
    pub missing: String,
}

impl From<BandTooDeep> for Diagnostic {
    fn from(told: BandTooDeep) -> Diagnostic {
        let BandTooDeep {
            panel,
            band,
            edge,
            needed,
            room,
            missing,
        } = told;
        CODE.report(format!(
            "the bands of {panel} are too deep: they need {needed}, and there is {room}"
        ))
        .label(band, "so deep are the bands")
        .label(edge, format!("{room} here"))
        .sum(format!("{needed} - {room} = {missing} too little"))
        .help("make the bands shallower, or choose an outline with longer edges and wider curves")
    }
}
