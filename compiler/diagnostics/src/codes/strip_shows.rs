//! Strips of tape behind the folds that are longer than a pleat is deep.

use crate::example::one_window;
use crate::{Code, Diagnostic, PlacedText, Severity};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "strip-shows",
    severity: Severity::Warning,
    page: "\
The strips of tape that hold the pleats from behind are longer than the shallowest pleat is deep.

A fold covers the cloth behind it by its own depth. What reaches further is seen beside it, and holds
the panel where it should hang free.

Make the strips no longer than the shallowest pleat is deep, or leave their length out: they are then
as long as that.
",
    failing: one_window! {
        make: "seam: 1/2 in, lining: none, tape: 3/8 in wide, pleat strips: 2 behind each fold, 3 in long",
        items: "pleats pair { margin 12 in to 22 in, knife 2 in toward left, margin 12 in to 22 in }\n",
        panel: ["finished width: 40 in", "drop: 14 in", "pleats: pair"],
    },
    mend: one_window! {
        make: "seam: 1/2 in, lining: none, tape: 3/8 in wide, pleat strips: 2 behind each fold",
        items: "pleats pair { margin 12 in to 22 in, knife 2 in toward left, margin 12 in to 22 in }\n",
        panel: ["finished width: 40 in", "drop: 14 in", "pleats: pair"],
    },
};

/// The strips behind the pleats are longer than the shallowest pleat is deep.
pub struct StripShows {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// How long the strips are.
    pub length: PlacedText,
    /// How deep that pleat is.
    pub depth: PlacedText,
    /// How much of a strip shows.
    pub amount: String,
}

impl From<StripShows> for Diagnostic {
    fn from(told: StripShows) -> Diagnostic {
        let StripShows {
            panel,
            length,
            depth,
            amount,
        } = told;
        CODE.report(format!(
            "the strips behind the pleats of {panel} are {length} long, and a pleat is {depth} deep"
        ))
        .label(length.span, format!("{length} long"))
        .label(depth.span, format!("{depth} deep"))
        .sum(format!(
            "{length} of strip - {depth} of pleat = {amount} that shows"
        ))
        .help(format!(
            "make the strips no longer than {depth}, or leave their length out"
        ))
    }
}
