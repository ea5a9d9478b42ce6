//! A panel over a join that does not reach the margin it states.

use crate::example::one_window;
use crate::{Code, Diagnostic, Fix, PlacedText, Severity};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "join-not-covered",
    severity: Severity::Error,
    page: "\
A panel that lies over a join says by how much it must reach beyond the join on each side, and its
finished width gives less.

The margin keeps the join hidden when the panels are hung or shift a little to one side.

Make the panel wider, or ask for a smaller margin.
",
    failing: one_window! {
        panel: ["finished width: 20 in", "drop: 14 in"],
        others: "panel bridge like front { finished width: 6 in, covers: 4 in each side }",
        row: "front, front\n    over joins: bridge",
    },
    mend: one_window! {
        panel: ["finished width: 20 in", "drop: 14 in"],
        others: "panel bridge like front { finished width: 8 in, covers: 4 in each side }",
        row: "front, front\n    over joins: bridge",
    },
};

/// A panel over a join covers less on each side than it is asked to.
pub struct JoinNotCovered {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// What it is asked to cover on each side.
    pub wanted: PlacedText,
    /// How wide the panel hangs.
    pub finished: PlacedText,
    /// What it covers on each side, to be typed in.
    pub covered: String,
    /// How far the two panels at the join overlap.
    pub overlap: String,
    /// The finished width that would do, where one was written.
    pub enough: Option<String>,
}

impl From<JoinNotCovered> for Diagnostic {
    fn from(told: JoinNotCovered) -> Diagnostic {
        let JoinNotCovered {
            panel,
            wanted,
            finished,
            covered,
            overlap,
            enough,
        } = told;
        let diagnostic = CODE
            .report(format!(
                "{panel} covers its join by {covered} on each side, not by {wanted}"
            ))
            .label(finished.span, format!("{finished} finished"))
            .label(wanted.span, format!("{wanted} is asked for"))
            .sum(format!(
                "({finished} finished - {overlap} of overlap) / 2 = {covered} on each side"
            ));
        match enough {
            Some(enough) => diagnostic
                .help(format!(
                    "write `finished width: {enough}` or more, or ask for `covers: {covered} each side`"
                ))
                .fix(Fix::replace(
                    format!("make the panel {enough} wide"),
                    finished.span,
                    enough,
                )),
            None => diagnostic.help(format!(
                "make the panel wider, or ask for `covers: {covered} each side`"
            )),
        }
    }
}
