//! A name of one kind of thing where another is wanted.

use crate::{Code, Diagnostic, Example, Severity, Span, with_article};

/// A name of one kind of thing where another is wanted.
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

/// `name` at `used` is the name of a `found` where a `wanted` must stand (bare nouns: "rod");
/// `described` is where the name was given, unless that is in the standard library.
pub fn name_wrong_kind(
    used: Span,
    name: &str,
    found: &str,
    wanted: &str,
    described: Option<Span>,
) -> Diagnostic {
    let (found, wanted) = (with_article(found), with_article(wanted));
    CODE.report(format!("`{name}` is {found}, not {wanted}"))
        .label(used, format!("{wanted} is wanted here"))
        .label_if_known(described, format!("described here as {found}"))
        .help(format!("write the name of {wanted}"))
}
