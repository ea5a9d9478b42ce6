//! Something described and used by nothing.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "name-unused",
    severity: Severity::Warning,
    page: "\
Something is described in the file of a window, and neither the window nor anything it uses refers to
it. Often the line that should refer to it names something else, and the wrong cloth is bought.

Files without a window are collections for others, and are not checked for this.

Refer to it where it belongs, or take it out.
",
    failing: Example::Text("\
use standard rods, headings, methods

fabric kelp-stripe { width: 54 in }
fabric sand-twill { width: 54 in }
treatment plain(drop, face) {
    panel wing {
        finished width: fill
        drop: drop
        face: face
        head: folded-over-rod
        make: hemmed
    }
    row: wing
}
window bench: plain {
    opening: 36 in x 52 in
    rod: steel-rod(40 in)
    drop: 15 in
    face: kelp-stripe
}
"),
    mend: Example::Text("\
use standard rods, headings, methods

fabric kelp-stripe { width: 54 in }
treatment plain(drop, face) {
    panel wing {
        finished width: fill
        drop: drop
        face: face
        head: folded-over-rod
        make: hemmed
    }
    row: wing
}
window bench: plain {
    opening: 36 in x 52 in
    rod: steel-rod(40 in)
    drop: 15 in
    face: kelp-stripe
}
"),
};

/// Something is described and nothing refers to it.
pub struct NameUnused<'a> {
    /// Where it was named.
    pub span: Span,
    /// What sort of thing it is: "making method".
    pub kind: &'a str,
    /// What it is called.
    pub name: &'a str,
}

impl From<NameUnused<'_>> for Diagnostic {
    fn from(told: NameUnused<'_>) -> Diagnostic {
        let NameUnused { span, kind, name } = told;
        CODE.report(format!("the {kind} `{name}` is used by nothing"))
            .label(span, "described here, and nothing refers to it")
            .help(format!(
                "refer to `{name}` where it belongs, or take it out"
            ))
    }
}
