//! An outline whose lowest point stays short of the drop.

use crate::example::one_window;
use crate::{Code, Diagnostic, PlacedText, Severity};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "outline-short-of-drop",
    severity: Severity::Error,
    page: "\
No point of the outline reaches the drop that is ordered.

The drop is the finished length the client was told. The panel would hang shorter.

Let the lowest point of the outline lie at `drop`, or order the drop that the outline has.
",
    failing: one_window! {
        items: "\
outline plain-shape whole {
    from (0, drop - 1 in)
    to (width, drop - 1 in)
    up to heading
}
",
        panel: ["finished width: 40 in", "drop: 14 in", "outline: plain-shape"],
    },
    mend: one_window! {
        items: "\
outline plain-shape whole {
    from (0, drop)
    to (width, drop)
    up to heading
}
",
        panel: ["finished width: 40 in", "drop: 14 in", "outline: plain-shape"],
    },
};

/// The lowest point of an outline lies above the drop of its panel.
pub struct OutlineShortOfDrop {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// How far down it reaches; at the place where the panel names its outline.
    pub lowest: PlacedText,
    /// How far down it should reach.
    pub drop: PlacedText,
    /// How much is missing.
    pub amount: String,
}

impl From<OutlineShortOfDrop> for Diagnostic {
    fn from(told: OutlineShortOfDrop) -> Diagnostic {
        let OutlineShortOfDrop {
            panel,
            lowest,
            drop,
            amount,
        } = told;
        CODE.report(format!(
            "the outline of {panel} stays {amount} short of its drop"
        ))
        .label(lowest.span, format!("reaches {lowest} down"))
        .label(drop.span, format!("a drop of {drop}"))
        .sum(format!(
            "{drop} of drop - {lowest} of outline = {amount} too short"
        ))
        .help("let the lowest point of the outline lie at `drop`")
    }
}
