//! A bracket that is opened and never closed.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "bracket-not-closed",
    severity: Severity::Error,
    page: "\
A `{` or a `(` is opened, and the file ends, or an outer bracket closes, before it is closed.

The lines after it are then taken as part of it: the drop of one panel could become the drop of
another, so nothing below it is trusted.

Write the closing bracket after the last line that belongs to it. The report names the line that
opened it and the place where the close was missed.
",
    failing: Example::Text(
        "\
fabric kelp-stripe {
    width: 54 in
",
    ),
    mend: Example::Text(
        "\
fabric kelp-stripe {
    width: 54 in
}
",
    ),
};

/// A bracket is opened and never closed.
pub struct BracketNotClosed {
    /// The bracket, which is told first.
    pub open: Span,
    /// Which bracket that is: `(` or `{`.
    pub bracket: char,
    /// Where it should have been closed at the latest.
    pub missed: Span,
}

impl From<BracketNotClosed> for Diagnostic {
    fn from(told: BracketNotClosed) -> Diagnostic {
        let BracketNotClosed {
            open,
            bracket,
            missed,
        } = told;
        let close = closing(bracket);
        CODE.report(format!("a `{bracket}` is never closed"))
            .label(open, "opened here")
            .label(missed, format!("no `{close}` up to here"))
            .help(format!(
                "write `{close}` after the last line that belongs to it"
            ))
    }
}

/// The bracket that closes another.
pub(super) fn closing(opening: char) -> char {
    if opening == '(' { ')' } else { '}' }
}
