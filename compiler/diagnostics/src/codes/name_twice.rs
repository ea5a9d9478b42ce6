//! Two things of one name.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "name-twice",
    severity: Severity::Error,
    page: "\
Two things carry the same name, in one file or in two that are used together.

Whoever writes the name means one of them, and cloth is cut for the other.

Rename one and every line that means it, or take it out if it is a copy. To change only some properties
of a thing, give the changed one a new name: `fabric sand-twill like kelp-stripe { … }`.
",
    failing: Example::Text("\
fabric kelp-stripe { width: 54 in }
fabric kelp-stripe { width: 48 in }
"),
    mend: Example::Text("\
fabric kelp-stripe { width: 54 in }
fabric kelp-stripe-narrow { width: 48 in }
"),
};

/// Two things of one kind have the same name.
pub struct NameTwice<'a> {
    /// The name of the later one.
    pub second: Span,
    /// The name of the earlier one.
    pub first: Span,
    /// What both are called.
    pub name: &'a str,
}

impl From<NameTwice<'_>> for Diagnostic {
    fn from(told: NameTwice<'_>) -> Diagnostic {
        let NameTwice {
            second,
            first,
            name,
        } = told;
        CODE.report(format!("two things are called `{name}`"))
            .label(second, "and here again")
            .label(first, "called so here")
            .help("rename one of them, or take one out")
    }
}
