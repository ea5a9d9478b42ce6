//! A unit that is not known.

use crate::{Code, Diagnostic, Example, Fix, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "unit-unknown",
    severity: Severity::Error,
    page: "\
The word after a number is not a unit of this language.

A number with the wrong unit is cut wrong: 54 of the one is not 54 of the other, so none is guessed.

Lengths are written with `in`, `ft`, `yd`, `mm`, `cm` or `m`; cloth is weighed in `g/m2` or `oz/yd2`.
",
    failing: Example::Text("fabric kelp-stripe { width: 54 inchs }\n"),
    mend: Example::Text("fabric kelp-stripe { width: 54 inches }\n"),
};

/// `typed` at `span` stands where a unit does; `suggestion` is the nearest unit.
pub fn unit_unknown(span: Span, typed: &str, suggestion: Option<String>) -> Diagnostic {
    let diagnostic = CODE
        .report(format!("`{typed}` is not a unit"))
        .label(span, "no unit of this name is known");
    match suggestion {
        Some(nearest) => diagnostic
            .help(format!("did you mean `{nearest}`?"))
            .fix(Fix::replace(format!("write `{nearest}`"), span, nearest)),
        None => diagnostic.help("write a length with `in`, `ft`, `yd`, `mm`, `cm` or `m`"),
    }
}
