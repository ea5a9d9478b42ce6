//! A fullness under one.

use crate::example::one_window;
use crate::{Code, Diagnostic, PlacedText, Severity};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "fullness-under-one",
    severity: Severity::Error,
    page: "\
Fullness is the flat width over the finished width: how many times the width it covers the cloth is
wide. Under one, the cloth is narrower than what it is to cover.

Cloth can be gathered, and not stretched.

Write the whole of it: half as much again is `1 1/2 times`. A panel that hangs flat needs no
fullness.
",
    failing: one_window! {
        fabric: "width: 118 in",
        panel: ["finished width: 40 in", "fullness: 1/2 times", "drop: 14 in"],
    },
    mend: one_window! {
        fabric: "width: 118 in",
        panel: ["finished width: 40 in", "fullness: 1 1/2 times", "drop: 14 in"],
    },
};

/// A fullness of less than one leaves less cloth than there is to cover.
pub struct FullnessUnderOne {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// How many times the finished width the flat width is to be.
    pub fullness: PlacedText,
    /// One more, which may have been meant.
    pub added: String,
}

impl From<FullnessUnderOne> for Diagnostic {
    fn from(told: FullnessUnderOne) -> Diagnostic {
        let FullnessUnderOne {
            panel,
            fullness,
            added,
        } = told;
        CODE.report(format!("{panel} has a fullness of {fullness} times"))
            .label(fullness.span, "less cloth than it has to cover")
            .sum(format!(
                "flat width = {fullness} x finished width: the cloth is too narrow"
            ))
            .help(format!(
                "if that much is to be added to the finished width, write `fullness: {added} times`"
            ))
    }
}
