//! A warning accepted that there is not.

use crate::{Code, Diagnostic, Example, Fix, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "warning-unknown",
    severity: Severity::Error,
    page: "\
An `accept` line names a warning by its code, and no warning has this one. A warning shows its code in
square brackets at the end of its first line.

What is accepted by a wrong name is not accepted: the warning goes on being told.

Copy the code from the warning, or look for it in what `pelmet explain --list` prints.
",
    failing: Example::Text("accept seam-show: \"the pleat hides it\"\n"),
    mend: Example::Text("# No warning is left to accept.\n"),
};

/// `typed` at `span` is the code of no warning; `suggestion` is the nearest that is.
pub fn warning_unknown(span: Span, typed: &str, suggestion: Option<String>) -> Diagnostic {
    let diagnostic = CODE
        .report(format!("no warning is called `{typed}`"))
        .label(span, "this is the code of no warning");
    let diagnostic = match suggestion {
        Some(nearest) => diagnostic
            .help(format!("did you mean `{nearest}`?"))
            .fix(Fix::replace(format!("write `{nearest}`"), span, nearest)),
        None => diagnostic,
    };
    diagnostic.help("`pelmet explain --list` prints every code")
}
