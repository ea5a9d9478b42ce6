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
            to_cover,
            covered,
            amount,
            ..
        } = &lengths;
        let title = format!("the row of {window} is {amount} too wide for {to_cover}");
        let covering = format!("takes {covered}");
        let difference = format!("{covered} of panels - {to_cover} to cover = {amount} too much");
        lengths.diagnostic(&CODE, title, covering, difference)
    }
}
