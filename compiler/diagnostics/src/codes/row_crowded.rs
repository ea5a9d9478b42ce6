//! A row that needs more than its rod or board.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity};

use super::row_uncovered::RowLengths;

/// Its page for `pelmet explain`, with an example and the mend.
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

/// The panels of a row take more than there is to hang over.
pub struct RowCrowded(pub RowLengths);

impl From<RowCrowded> for Diagnostic {
    fn from(RowCrowded(lengths): RowCrowded) -> Diagnostic {
        let RowLengths {
            window,
            row,
            support,
            to_cover,
            covered,
            amount,
            sums,
            to_write,
        } = lengths;
        let diagnostic = CODE
            .report(format!(
                "the row of {window} is {amount} too wide for {to_cover}"
            ))
            .label(row, format!("takes {covered}"))
            .label(support, format!("{to_cover} to cover"));
        let diagnostic = sums.into_iter().fold(diagnostic, Diagnostic::sum);
        let diagnostic = diagnostic.sum(format!(
            "{covered} of panels - {to_cover} to cover = {amount} too much"
        ));
        let diagnostic = match to_write {
            Some(to_write) => diagnostic.help(format!("write {to_write}")),
            None => diagnostic,
        };
        diagnostic.help("let a panel take what is left: `finished width: fill`")
    }
}
