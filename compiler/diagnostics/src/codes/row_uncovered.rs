//! A row that does not cover its rod or board.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
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

/// A row, and the length it hangs over, which is another.
pub struct RowLengths {
    /// The window, as a sentence names it: "the window `north`".
    pub window: String,
    /// Where the row was written.
    pub row: Span,
    /// Where the window names its rod or board.
    pub support: Span,
    /// The length of the rod or board, returns included.
    pub to_cover: String,
    /// The length that the row covers.
    pub covered: String,
    /// How much the two differ.
    pub amount: String,
    /// How each of the two comes about.
    pub sums: [String; 2],
    /// What to write so that they do not differ, where a width can be so written:
    /// "`finished width: 20 in` for `bib`".
    pub to_write: Option<String>,
}

impl RowLengths {
    /// The diagnostic of a row under `code`: what is wrong, what its panels do to the length they hang
    /// over, and the sum that shows by how much.
    pub(super) fn diagnostic(
        self,
        code: &'static Code,
        title: String,
        covering: String,
        difference: String,
    ) -> Diagnostic {
        let diagnostic = code
            .report(title)
            .label(self.row, covering)
            .label(self.support, format!("{} to cover", self.to_cover));
        let diagnostic = self
            .sums
            .into_iter()
            .fold(diagnostic, Diagnostic::sum)
            .sum(difference);
        let diagnostic = match self.to_write {
            Some(to_write) => diagnostic.help(format!("write {to_write}")),
            None => diagnostic,
        };
        diagnostic.help("let a panel take what is left: `finished width: fill`")
    }
}

/// The panels of a row leave part of what they hang over bare.
pub struct RowUncovered(pub RowLengths);

impl From<RowUncovered> for Diagnostic {
    fn from(RowUncovered(lengths): RowUncovered) -> Diagnostic {
        let RowLengths {
            window,
            to_cover,
            covered,
            amount,
            ..
        } = &lengths;
        let title = format!("the row of {window} leaves {amount} of {to_cover} uncovered");
        let covering = format!("covers {covered}");
        let difference = format!("{to_cover} to cover - {covered} covered = {amount} bare");
        lengths.diagnostic(&CODE, title, covering, difference)
    }
}
