//! A kind of item that the language does not have.

use crate::{Code, Diagnostic, Example, Fix, Severity, Span, did_you_mean, listed};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "item-unknown",
    severity: Severity::Error,
    page: "\
The line describes something by a first word that is no kind of item: not a fabric, a rod, an outline,
pleats, a panel, a treatment, a window or one of the others.

Write the word for the kind of item. A property of an item has a colon: `drop: 17 in`.
",
    failing: Example::Text("fabirc kelp-stripe { width: 54 in }\n"),
    mend: Example::Text("fabric kelp-stripe { width: 54 in }\n"),
};

/// `typed` at `span` is no kind of item; those that can stand here are `known`.
pub fn item_unknown(span: Span, typed: &str, known: &[&str]) -> Diagnostic {
    let diagnostic = CODE
        .report(format!("`{typed}` is no kind of item"))
        .label(span, "nothing of this kind is known here");
    match did_you_mean(typed, known.iter().copied()) {
        Some(nearest) => diagnostic
            .help(format!("did you mean `{nearest}`?"))
            .fix(Fix::replace(format!("write `{nearest}`"), span, nearest)),
        None if known.is_empty() => diagnostic.help("take it out"),
        None => diagnostic.help(format!("begin the line with {}", listed(known, "or"))),
    }
}
