//! A cell of a list whose quotes are not closed.

use crate::example::windows_from;
use crate::{Code, Diagnostic, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "list-quote-open",
    severity: Severity::Error,
    page: "\
A cell of a list of windows begins with a quote and its line ends before another closes it. The cell
would go on through the lines below, and the windows on them would be lost.

Write the quote after the last letter of the cell, or take out the one before it: only a value that
holds a comma needs quotes.
",
    failing: windows_from! { "\
name,rod,drop
bay,\"pole(40 in),12 in
" },
    mend: windows_from! { "\
name,rod,drop
bay,\"pole(40 in)\",12 in
" },
};

/// The quote at `span` is not closed in its line.
pub fn list_quote_open(span: Span) -> Diagnostic {
    CODE.report("the quotes of a cell are not closed")
        .label(
            span,
            "opened here, and the line ends before they are closed",
        )
        .help(
            "write `\"` after the last letter of the cell; only a value with a comma needs quotes",
        )
}
