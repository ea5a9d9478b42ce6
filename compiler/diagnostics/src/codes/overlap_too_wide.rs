//! An overlap as wide as a panel it lies on.

use crate::example::one_window;
use crate::{Code, Diagnostic, PlacedText, Severity};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "overlap-too-wide",
    severity: Severity::Error,
    page: "\
Neighbours in the row overlap by as much as one of them is wide, or more.

That panel would disappear behind its neighbours, or reach past the far side of them.

Make the overlap smaller, or the panel wider.
",
    failing: one_window! {
        panel: ["finished width: fill", "drop: 14 in"],
        others: "panel strip like front { finished width: 3 in }",
        row: "front, strip, front\n    overlap: 4 in",
    },
    mend: one_window! {
        panel: ["finished width: fill", "drop: 14 in"],
        others: "panel strip like front { finished width: 3 in }",
        row: "front, strip, front\n    overlap: 1 in",
    },
};

/// The neighbours in a row overlap by as much as one of them is wide, or more.
pub struct OverlapTooWide {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// How far each panel lies over its neighbour.
    pub overlap: PlacedText,
    /// The finished width of the panel.
    pub finished: PlacedText,
}

impl From<OverlapTooWide> for Diagnostic {
    fn from(told: OverlapTooWide) -> Diagnostic {
        let OverlapTooWide {
            panel,
            overlap,
            finished,
        } = told;
        CODE.report(format!("an overlap of {overlap} leaves nothing of {panel}"))
            .label(overlap.span, format!("{overlap} over each neighbour"))
            .label(finished.span, format!("{finished} finished"))
            .sum(format!(
                "{finished} finished - {overlap} of overlap: nothing is left to be seen"
            ))
            .help(format!(
                "write an overlap of less than {finished}, or make the panel wider"
            ))
    }
}
