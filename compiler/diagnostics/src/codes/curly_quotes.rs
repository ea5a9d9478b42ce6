//! A text in curly quotes.

use crate::{Code, Diagnostic, Example, Fix, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "curly-quotes",
    severity: Severity::Error,
    page: "\
Word processors and telephones turn straight quotes into curly ones. The text is read as if it had
straight quotes.

Write straight quotes: `\"`. The inch and foot marks after a number may be curly; they are read as what
they mean.
",
    failing: Example::Files(&[
        ("main.pelmet", "use “style.pelmet”\n"),
        ("style.pelmet", "units inches\n"),
    ]),
    mend: Example::Files(&[
        ("main.pelmet", "use \"style.pelmet\"\n"),
        ("style.pelmet", "units inches\n"),
    ]),
};

/// A text stands in curly quotes.
pub struct CurlyQuotes {
    /// The quote before it.
    pub open: Span,
    /// The quote after it.
    pub close: Span,
}

impl From<CurlyQuotes> for Diagnostic {
    fn from(told: CurlyQuotes) -> Diagnostic {
        let CurlyQuotes { open, close } = told;
        CODE.report("a text stands in curly quotes")
            .label(open.to(close), "in curly quotes")
            .help("write straight quotes: `\"`")
            .fix(Fix::replace("write straight quotes", open, "\"").and(close, "\""))
    }
}
