//! A parameter named like something that is always known there.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "name-reserved",
    severity: Severity::Error,
    page: "\
Inside an outline the panel's `width` and `drop` are always known; inside a treatment so are the
measures of the opening and the rod. A parameter of the same name would hide them, and nobody
reading the file could tell which is meant.

Leave the parameter out if you mean what is always known, or give it another name.
",
    failing: Example::Text(
        "\
outline flared(width, flare = 1 in) {
    from (0, drop)
    to (width, drop)
    up to heading
}
",
    ),
    mend: Example::Text(
        "\
outline flared(foot = 10 in) {
    from (0, drop)
    to (width, drop)
    up to heading
}
",
    ),
};

/// A parameter has a name that always means something in its item.
pub struct NameReserved<'a> {
    /// The parameter, in the brackets of its template.
    pub span: Span,
    /// What it is called: "width".
    pub name: &'a str,
    /// What the template is: "outline".
    pub item: &'a str,
}

impl From<NameReserved<'_>> for Diagnostic {
    fn from(told: NameReserved<'_>) -> Diagnostic {
        let NameReserved { span, name, item } = told;
        CODE.report(format!("`{name}` is always known inside {item}"))
            .label(span, "a parameter cannot have this name")
            .help(format!(
                "leave `{name}` out of the brackets, or give the parameter another name"
            ))
    }
}
