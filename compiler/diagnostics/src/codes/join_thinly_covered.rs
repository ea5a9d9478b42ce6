//! A panel that reaches very little beyond the join it lies over.

use crate::example::one_window;
use crate::{Code, Diagnostic, PlacedText, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "join-thinly-covered",
    severity: Severity::Warning,
    page: "\
A panel that lies over a join reaches only a little beyond it on each side.

Panels shift when a curtain is dusted or a window opened. The join then looks out beside the panel
that should hide it.

Make the panel wider. If the margin is enough for you, say so: `covers: 1/2 in each side`.
",
    failing: one_window! {
        panel: ["finished width: 20 in", "drop: 14 in"],
        others: "panel bridge like front { finished width: 1 1/2 in }",
        row: "front, front\n    over joins: bridge",
    },
    mend: one_window! {
        panel: ["finished width: 20 in", "drop: 14 in"],
        others: "panel bridge like front { finished width: 6 in }",
        row: "front, front\n    over joins: bridge",
    },
};

/// A panel over a join covers very little on each side.
pub struct JoinThinlyCovered {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// How wide the panel hangs.
    pub finished: PlacedText,
    /// Where it was hung over the joins.
    pub over: Span,
    /// What it covers on each side, to be typed in.
    pub covered: String,
    /// How far the two panels at the join overlap.
    pub overlap: String,
    /// What is covered at the least as a rule.
    pub usual: String,
    /// The finished width that covers as much, where one was written.
    pub enough: Option<String>,
}

impl From<JoinThinlyCovered> for Diagnostic {
    fn from(told: JoinThinlyCovered) -> Diagnostic {
        let JoinThinlyCovered {
            panel,
            finished,
            over,
            covered,
            overlap,
            usual,
            enough,
        } = told;
        let diagnostic = CODE
            .report(format!(
                "{panel} covers its join by only {covered} on each side"
            ))
            .label(finished.span, format!("reaches {covered} beyond the join"))
            .label(over, "it lies over the joins")
            .sum(format!(
                "({finished} finished - {overlap} of overlap) / 2 = {covered} on each side"
            ))
            .sum(format!("under {usual} on each side is thin"));
        let that_is_enough = format!("say that this is enough: `covers: {covered} each side`");
        match enough {
            Some(enough) => diagnostic.help(format!(
                "write `finished width: {enough}` or more, or {that_is_enough}"
            )),
            None => diagnostic.help(format!("make the panel wider, or {that_is_enough}")),
        }
    }
}
