//! A closing bracket with nothing to close.

use crate::{Code, Diagnostic, Example, Fix, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "bracket-not-opened",
    severity: Severity::Error,
    page: "\
A `}` or a `)` stands where no bracket of its kind is open. Either it is one too many, or the line
that should open it lost its bracket.

Where things end decides what belongs to what: a stray `}` may cut a panel off from half of its
properties.

Take the bracket out, or write the opening one where it belongs.
",
    failing: Example::Text(
        "\
fabric kelp-stripe { width: 54 in }
}
",
    ),
    mend: Example::Text("fabric kelp-stripe { width: 54 in }\n"),
};

/// `bracket` at `close` closes nothing.
pub fn bracket_not_opened(close: Span, bracket: char) -> Diagnostic {
    let open = if bracket == ')' { '(' } else { '{' };
    CODE.report(format!("a `{bracket}` closes nothing"))
        .label(close, format!("no `{open}` is open here"))
        .help(format!("take it out, or write the `{open}` that it closes"))
        .fix(Fix::remove(format!("take out the `{bracket}`"), close))
}
