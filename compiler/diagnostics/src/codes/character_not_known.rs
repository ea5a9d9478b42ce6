//! A character that has no meaning here.

use crate::words::shown;
use crate::{Code, Diagnostic, Example, Fix, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "character-not-known",
    severity: Severity::Error,
    page: "\
The character is no letter, digit or sign that the language uses. It may have come along with text
copied from elsewhere, and may not even be visible.

It is reported, not passed over, since an unseen character can hide what a line says.

Take it out. In notes after `#` and between quotes any visible character may stand.
",
    failing: Example::Text("fabric kelp-stripe { width: 54 in; }\n"),
    mend: Example::Text("fabric kelp-stripe { width: 54 in }\n"),
};

/// `character` at `span` means nothing in the language.
pub fn character_not_known(span: Span, character: char) -> Diagnostic {
    let shown = shown(character);
    CODE.report(format!("{shown} means nothing here"))
        .label(span, "not known")
        .help("take it out, or put it between quotes if it is part of a text")
        .fix(Fix::remove("take it out", span))
}
