//! A bracket closed by one of the other kind.

use crate::{Code, Diagnostic, Example, Severity, Span};

use super::bracket_not_closed::closing;

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "brackets-differ",
    severity: Severity::Error,
    page: "\
A round bracket is closed by a curly one, or the other way round. Usually the right bracket was
forgotten and the next one outside it came first.

Round brackets hold the numbers of one sum or one point, curly ones the properties of one item; where
they cross, neither has a sure end.

Close each bracket with its own kind, the inner one first.
",
    failing: Example::Text("\
outline tide half {
    from (0, drop
}
"),
    mend: Example::Text("\
outline tide half {
    from (0, drop)
    to (width, drop)
    up to heading
}
"),
};

/// A bracket is closed by one of the other kind.
pub struct BracketsDiffer {
    /// The bracket that opens, of all still open the nearest.
    pub open: Span,
    /// Which bracket that is: `(` or `{`.
    pub opened: char,
    /// The bracket that closes, which is told first.
    pub close: Span,
    /// Which bracket that is: `)` or `}`.
    pub closed: char,
}

impl From<BracketsDiffer> for Diagnostic {
    fn from(told: BracketsDiffer) -> Diagnostic {
        let BracketsDiffer {
            open,
            opened,
            close,
            closed,
        } = told;
        let wanted = closing(opened);
        CODE.report(format!("a `{opened}` is closed by a `{closed}`"))
            .label(close, format!("a `{wanted}` is wanted first"))
            .label(open, "opened here")
            .help(format!("write `{wanted}` before this `{closed}`"))
    }
}
