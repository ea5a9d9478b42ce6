//! A turning opening longer than the top edge it lies in.

use crate::example::one_window;
use crate::{Code, Diagnostic, PlacedText, Severity};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "opening-too-wide",
    severity: Severity::Error,
    page: "\
The gap that is left in the top seam to turn the panel right side out is as long as the seam or
longer.

Nothing would be left of the seam: the face and the lining would not hold together at the top.

Make the opening shorter than the panel is wide.
",
    failing: one_window! {
        make: "seam: 1/2 in, lining: none, turning opening: 45 in",
        panel: ["finished width: 40 in", "drop: 14 in"],
    },
    mend: one_window! {
        make: "seam: 1/2 in, lining: none, turning opening: 6 in",
        panel: ["finished width: 40 in", "drop: 14 in"],
    },
};

/// The opening left for turning is as wide as the top edge it is left in, or wider.
pub struct OpeningTooWide {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// How much of the top edge is left open.
    pub opening: PlacedText,
    /// How wide the top edge is.
    pub edge: PlacedText,
}

impl From<OpeningTooWide> for Diagnostic {
    fn from(told: OpeningTooWide) -> Diagnostic {
        let OpeningTooWide {
            panel,
            opening,
            edge,
        } = told;
        CODE.report(format!(
            "the turning opening of {panel} is {opening}, and its top edge {edge}"
        ))
        .label(opening.span, format!("{opening} left open"))
        .label(edge.span, format!("{edge} at the top"))
        .sum(format!(
            "{edge} of top edge - {opening} left open: nothing is left of the seam"
        ))
        .help(format!("write a turning opening of less than {edge}"))
    }
}
