//! A name that nothing in the design carries.

use crate::{Code, Diagnostic, Example, Fix, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "name-unknown",
    severity: Severity::Error,
    page: "\
A line refers to something by a name, and nothing in this file, in the files it uses or in the
standard library carries that name. Most often a letter is missing, or a name was changed in one place
only.

A piece whose cloth or rod is not known cannot be measured, cut or priced, so nothing is guessed.

Write the name as it stands where the thing is described, describe the thing, or add the `use` line of
the file that describes it.
",
    failing: Example::Text("\
fabric kelp-stripe { width: 54 in }
fabric sand-twill like kelp-strip { width: 48 in }
"),
    mend: Example::Text("\
fabric kelp-stripe { width: 54 in }
fabric sand-twill like kelp-stripe { width: 48 in }
"),
};

/// Nothing of the kind that is wanted has this name.
pub struct NameUnknown<'a> {
    /// Where the name is written.
    pub span: Span,
    /// What is wanted: "pleat rule".
    pub noun: &'a str,
    /// The word that describes such a thing: "pleats".
    pub word: &'a str,
    /// The name as it is written.
    pub name: &'a str,
    /// The nearest name that there is.
    pub suggestion: Option<String>,
}

impl From<NameUnknown<'_>> for Diagnostic {
    fn from(told: NameUnknown<'_>) -> Diagnostic {
        let NameUnknown {
            span,
            noun,
            word,
            name,
            suggestion,
        } = told;
        let diagnostic = CODE
            .report(format!("no {noun} is called `{name}`"))
            .label(span, format!("this {noun} is described nowhere"));
        match suggestion {
            Some(nearest) => diagnostic
                .help(format!("did you mean `{nearest}`?"))
                .fix(Fix::replace(format!("write `{nearest}`"), span, nearest)),
            None => diagnostic.help(format!("describe it: `{word} {name} {{ … }}`")),
        }
    }
}
