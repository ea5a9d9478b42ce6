//! A row that does not cover its rod or board.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// A row that does not cover its rod or board.
pub const CODE: Code = Code {
    slug: "row-uncovered",
    severity: Severity::Error,
    page: "\
The finished widths of the panels in the row, less what they overlap, add up to less than the rod or
board and its returns.

Some of the rod stays bare. On the window the panels would be pulled apart, and the gap shows at the
joins.

Make a panel wider, hang one more, or let a panel take what is left: `finished width: fill`.
",
    failing: one_window! {
        panel: ["finished width: 38 in", "drop: 14 in"],
    },
    mend: one_window! {
        panel: ["finished width: 40 in", "drop: 14 in"],
    },
};

/// The row of `window` covers `covered` of its rod or board and leaves `amount` bare; `sums` show
/// how both lengths come about, and `wider` is a line that closes the gap.
pub fn row_uncovered(
    window: &str,
    (row, support): (Span, Span),
    (to_cover, covered, amount): (&str, &str, &str),
    sums: [String; 2],
    wider: Option<String>,
) -> Diagnostic {
    let report = CODE
        .report(format!(
            "the row of {window} leaves {amount} of {to_cover} uncovered"
        ))
        .label(row, format!("covers {covered}"))
        .label(support, format!("{to_cover} to cover"));
    let report = sums.into_iter().fold(report, Diagnostic::sum);
    let report = report.sum(format!(
        "{to_cover} to cover - {covered} covered = {amount} bare"
    ));
    let report = match wider {
        Some(wider) => report.help(format!("write {wider}")),
        None => report,
    };
    report.help("let a panel take what is left: `finished width: fill`")
}
