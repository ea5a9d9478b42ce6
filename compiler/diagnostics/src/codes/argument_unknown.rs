//! A value given for a name that was not asked for.

use crate::{Code, Diagnostic, Example, Severity, Span, did_you_mean, listed};

/// Its page for `pelmet explain`, with an example and the mend.
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

/// A template is given something it does not ask for.
pub struct ArgumentUnknown<'a> {
    /// What is given in vain, in the brackets of the template.
    pub span: Span,
    /// What it was called.
    pub argument: &'a str,
    /// What the template is called.
    pub template: &'a str,
    /// What the template asks for.
    pub known: &'a [&'a str],
}

impl From<ArgumentUnknown<'_>> for Diagnostic {
    fn from(told: ArgumentUnknown<'_>) -> Diagnostic {
        let ArgumentUnknown {
            span,
            argument,
            template,
            known,
        } = told;
        let diagnostic = CODE
            .report(format!("`{template}` asks for no `{argument}`"))
            .label(span, format!("`{template}` has no use for this"));
        match did_you_mean(argument, known.iter().copied()) {
            Some(nearest) => diagnostic.help(format!("did you mean `{nearest}`?")),
            None if known.is_empty() => diagnostic.help("take it out; nothing is asked for"),
            None => diagnostic.help(format!("`{template}` asks for {}", listed(known, "and"))),
        }
    }
}
