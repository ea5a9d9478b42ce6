//! A fullness in percent, which is said in two ways.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "fullness-percent-unclear",
    severity: Severity::Error,
    page: "\
Fullness is flat width over finished width. In percent it is said in two ways. Specifications write
twice the finished width as 200 %: the whole cloth. Many workrooms call the same cloth 100 % full: the
cloth that is added.

The two differ by one whole finished width of cloth for each panel, so neither is assumed.

Write which of the two is meant, `200 % of finished width` or `100 % added`, or the number of times:
`2 times`.
",
    failing: Example::Text("\
use standard headings, methods

fabric dot-lawn { width: 54 in }
panel half {
    finished width: 20 in
    fullness: 200 %
    drop: 13 in
    face: dot-lawn
    head: pocket-on-rod
    make: hemmed
}
"),
    mend: Example::Text("\
use standard headings, methods

fabric dot-lawn { width: 54 in }
panel half {
    finished width: 20 in
    fullness: 200 % of finished width
    drop: 13 in
    face: dot-lawn
    head: pocket-on-rod
    make: hemmed
}
"),
};

/// A fullness in percent can be meant of the whole cloth, or of what is added to the finished
/// width.
pub struct FullnessPercentUnclear<'a> {
    /// The percentage.
    pub span: Span,
    /// The percentage as it is written: "200 %".
    pub typed: &'a str,
    /// What it is if the whole cloth is meant: "2 times".
    pub whole: &'a str,
    /// What it is if it is added: "3 times".
    pub added: &'a str,
}

impl From<FullnessPercentUnclear<'_>> for Diagnostic {
    fn from(told: FullnessPercentUnclear<'_>) -> Diagnostic {
        let FullnessPercentUnclear {
            span,
            typed,
            whole,
            added,
        } = told;
        CODE.report(format!("a fullness of `{typed}` can mean two things"))
            .label(span, "of the finished width, or added to it?")
            .sum(format!(
                "{typed} of the finished width is {whole} the finished width"
            ))
            .sum(format!("{typed} added to it is {added} the finished width"))
            .help(format!(
                "write `{typed} of finished width`, as specifications mean it"
            ))
            .help(format!(
                "or write `{typed} added`, if that comes on top of the finished width"
            ))
    }
}
