//! A row that needs more than its rod or board.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// A row that needs more than its rod or board.
pub const CODE: Code = Code {
    slug: "row-crowded",
    severity: Severity::Error,
    page: "\
The finished widths of the panels in the row, less what they overlap, add up to more than the rod or
board and its returns.

The panels would be pushed together: they buckle, their pleats open, and joins lie over one another
where no overlap was meant.

Make a panel narrower, hang one fewer, let the panels overlap, or let one take what is left:
`finished width: fill`.
",
    failing: one_window! {
        panel: ["finished width: 42 in", "drop: 14 in"],
    },
    mend: one_window! {
        panel: ["finished width: 40 in", "drop: 14 in"],
    },
};

/// The row of `window` takes `taken` where its rod or board has `to_cover`, `amount` less; `sums`
/// show how both lengths come about, and `narrower` is a line that makes room.
pub fn row_crowded(
    window: &str,
    (row, support): (Span, Span),
    (to_cover, taken, amount): (&str, &str, &str),
    sums: [String; 2],
    narrower: Option<String>,
) -> Diagnostic {
    let report = CODE
        .report(format!(
            "the row of {window} is {amount} too wide for {to_cover}"
        ))
        .label(row, format!("takes {taken}"))
        .label(support, format!("{to_cover} to cover"));
    let report = sums.into_iter().fold(report, Diagnostic::sum);
    let report = report.sum(format!(
        "{taken} of panels - {to_cover} to cover = {amount} too much"
    ));
    let report = match narrower {
        Some(narrower) => report.help(format!("write {narrower}")),
        None => report,
    };
    report.help("let a panel take what is left: `finished width: fill`")
}
