//! A panel over a join that does not reach the margin it states.

use crate::example::one_window;
use crate::{Code, Diagnostic, Fix, Severity, Span};

/// A panel over a join that does not reach the margin it states.
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

/// `panel`, whose finished width is `finished`, covers the join with its `overlap` by `covered` on
/// each side, where `wanted` is asked for; the width that would do is `enough`, where a finished
/// width was written.
pub fn join_not_covered(
    panel: &str,
    (covers, wanted): (Span, &str),
    (width, finished): (Span, &str),
    (covered, overlap): (&str, &str),
    enough: Option<&str>,
) -> Diagnostic {
    let report = CODE
        .report(format!(
            "{panel} covers its join by {covered} on each side, not by {wanted}"
        ))
        .label(width, format!("{finished} finished"))
        .label(covers, format!("{wanted} is asked for"))
        .sum(format!(
            "({finished} finished - {overlap} of overlap) / 2 = {covered} on each side"
        ));
    match enough {
        Some(enough) => report
            .help(format!(
                "write `finished width: {enough}` or more, or ask for `covers: {covered} each side`"
            ))
            .fix(Fix::replace(
                format!("make the panel {enough} wide"),
                width,
                enough,
            )),
        None => report.help(format!(
            "make the panel wider, or ask for `covers: {covered} each side`"
        )),
    }
}
