//! A value given for a name that was not asked for.

use crate::{Code, Diagnostic, Example, Severity, Span, did_you_mean, listed};

/// A value given for a name that was not asked for.
pub const CODE: Code = Code {
    slug: "argument-unknown",
    severity: Severity::Error,
    page: "\
A template lists in round brackets the values it asks for. This one is given a value it does not
ask for, by name or because more values are given than names are listed.

The value would go nowhere: the piece would be cut as if it had not been given.

Write one of the names the template lists, or take the value out.
",
    failing: Example::Text(
        "\
rod brass-pole(length) { length: length, diameter: 1 1/8 in }
rod long-pole like brass-pole(72 in, diametre: 1 in)
",
    ),
    mend: Example::Text(
        "\
rod brass-pole(length) { length: length, diameter: 1 1/8 in }
rod long-pole like brass-pole(72 in)
",
    ),
};

/// `argument` at `span` is none of the names that `template` asks for, which are `known`.
pub fn argument_unknown(span: Span, argument: &str, template: &str, known: &[&str]) -> Diagnostic {
    let report = CODE
        .report(format!("`{template}` asks for no `{argument}`"))
        .label(span, format!("`{template}` has no use for this"));
    match did_you_mean(argument, known.iter().copied()) {
        Some(nearest) => report.help(format!("did you mean `{nearest}`?")),
        None if known.is_empty() => report.help("take it out; nothing is asked for"),
        None => report.help(format!("`{template}` asks for {}", listed(known, "and"))),
    }
}
