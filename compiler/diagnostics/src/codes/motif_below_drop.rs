//! A motif below the lower edge of its panel.

use crate::example::one_window;
use crate::{Code, Diagnostic, PlacedText, Severity};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "motif-below-drop",
    severity: Severity::Error,
    page: "\
The motif is to lie farther below the heading line than the panel is long.

There is no cloth at that place, so the print cannot be laid out by it.

TextPlace the motif higher. Its distance is measured from the heading line, where the drop begins.
",
    failing: one_window! {
        fabric: "width: 54 in, repeat: 12 in along",
        panel: ["finished width: 40 in", "drop: 14 in"],
        window: "rod: pole, motif: centred on front, 20 in below heading",
    },
    mend: one_window! {
        fabric: "width: 54 in, repeat: 12 in along",
        panel: ["finished width: 40 in", "drop: 14 in"],
        window: "rod: pole, motif: centred on front, 8 in below heading",
    },
};

/// A motif is to lie below the lower edge of its panel.
pub struct MotifBelowDrop {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// How far below the heading line it is to lie.
    pub below: PlacedText,
    /// How far down the panel reaches.
    pub drop: PlacedText,
    /// How much that is less.
    pub amount: String,
}

impl From<MotifBelowDrop> for Diagnostic {
    fn from(told: MotifBelowDrop) -> Diagnostic {
        let MotifBelowDrop {
            panel,
            below,
            drop,
            amount,
        } = told;
        CODE.report(format!(
            "the motif on {panel} lies {amount} below its lower edge"
        ))
        .label(below.span, format!("{below} below the heading line"))
        .label(drop.span, format!("{drop} long"))
        .sum(format!(
            "{below} below the heading line - {drop} of drop = {amount} too low"
        ))
        .help(format!("write a distance of less than {drop}"))
    }
}
