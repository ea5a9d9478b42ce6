//! A name of one kind of thing where another is wanted.

use crate::{Code, Diagnostic, Example, Severity, Span, with_article};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "name-wrong-kind",
    severity: Severity::Error,
    page: "\
The name is known, and it belongs to a thing of another kind: a rod where a fabric is wanted, pleats
where an outline is.

Write the name of a thing of the kind that is wanted. The report shows where the name was given.
",
    failing: Example::Text(
        "\
rod brass-pole { length: 72 in, diameter: 1 1/8 in }
fabric sand-twill like brass-pole { width: 54 in }
",
    ),
    mend: Example::Text(
        "\
fabric kelp-stripe { width: 54 in }
fabric sand-twill like kelp-stripe { width: 48 in }
",
    ),
};

/// A name is that of a thing of another kind.
pub struct NameWrongKind<'a> {
    /// Where the name is written.
    pub used: Span,
    /// The name as it is written.
    pub name: &'a str,
    /// What has this name, without an article: "rod".
    pub found: &'a str,
    /// What is wanted, without an article: "fabric".
    pub wanted: &'a str,
    /// Where the name was given, unless that is in the standard library.
    pub described: Option<Span>,
}

impl From<NameWrongKind<'_>> for Diagnostic {
    fn from(told: NameWrongKind<'_>) -> Diagnostic {
        let NameWrongKind {
            used,
            name,
            found,
            wanted,
            described,
        } = told;
        let (found, wanted) = (with_article(found), with_article(wanted));
        CODE.report(format!("`{name}` is {found}, not {wanted}"))
            .label(used, format!("{wanted} is wanted here"))
            .label_if_known(described, format!("described here as {found}"))
            .help(format!("write the name of {wanted}"))
    }
}
