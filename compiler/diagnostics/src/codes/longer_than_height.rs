//! A panel longer than its rod or board is high.

use crate::example::one_window;
use crate::{Code, Diagnostic, PlacedText, Severity};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "longer-than-height",
    severity: Severity::Error,
    page: "\
The drop of the panel is more than the height of the rod or board above the floor.

The panel would lie on the floor, where it is trodden on, gathers dust and pulls out of its folds.

Make the drop shorter than the height, or correct the height if it was measured to another place.
",
    failing: one_window! {
        panel: ["finished width: 40 in", "drop: 90 in"],
        window: "rod: pole, top at 84 in",
    },
    mend: one_window! {
        panel: ["finished width: 40 in", "drop: 83 in"],
        window: "rod: pole, top at 84 in",
    },
};

/// A panel reaches farther down than the floor.
pub struct LongerThanHeight {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// How far the panel hangs down.
    pub drop: PlacedText,
    /// How high its rod or board hangs.
    pub height: PlacedText,
    /// How much of it lies on the floor.
    pub amount: String,
    /// The longest drop it can have, as it is typed in.
    pub to_write: String,
}

impl From<LongerThanHeight> for Diagnostic {
    fn from(told: LongerThanHeight) -> Diagnostic {
        let LongerThanHeight {
            panel,
            drop,
            height,
            amount,
            to_write,
        } = told;
        CODE.report(format!(
            "{panel} is {amount} longer than it hangs above the floor"
        ))
        .label(drop.span, format!("{drop} long"))
        .label(height.span, format!("{height} above the floor"))
        .sum(format!(
            "{drop} of drop - {height} of height = {amount} on the floor"
        ))
        .help(format!("{panel} needs a drop of at most {to_write}"))
    }
}
