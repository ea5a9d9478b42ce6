//! A cell of a list whose quotes are not closed.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// A cell of a list whose quotes are not closed.
pub const CODE: Code = Code {
    slug: "list-quote-open",
    severity: Severity::Error,
    page: "\
A cell of a list of windows begins with a quote and its line ends before another closes it. The cell
would go on through the lines below, and the windows on them would be lost.

Write the quote after the last letter of the cell, or take out the one before it: only a value that
holds a comma needs quotes.
",
    failing: Example::Files(&[
        ("job.pelmet", JOB),
        (
            "windows.csv",
            "\
name,rod,drop
bay,\"pole(40 in),12 in
",
        ),
    ]),
    mend: Example::Files(&[
        ("job.pelmet", JOB),
        (
            "windows.csv",
            "\
name,rod,drop
bay,\"pole(40 in)\",12 in
",
        ),
    ]),
};

const JOB: &str = "\
fabric calico { width: 45 in }
rod pole(length) { length: length, diameter: 1 in }
make seamed { seam: 1/2 in, lining: none }
treatment curtain(drop) {
    panel front {
        finished width: fill
        drop: drop
        head: over rod, tail 3 in
        make: seamed
        face: calico
    }
    row: front
}
windows from \"windows.csv\": curtain
";

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
