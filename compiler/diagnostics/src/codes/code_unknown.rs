//! A page asked for that does not exist.

use crate::{Code, Diagnostic, Example, Severity};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "code-unknown",
    severity: Severity::Error,
    page: "\
Every report ends its first line with a code in square brackets, and `pelmet explain` has a page for
each. It was asked for a code that no report has.

Copy the code from a report, or list all of them with `pelmet explain --list`.
",
    failing: Example::Told("Asking for `pelmet explain seem-shows`."),
    mend: Example::Told("Asking for `pelmet explain seam-shows`."),
};

/// No diagnostic has the code `slug`; `suggestion` is the nearest that one has.
pub fn code_unknown(slug: &str, suggestion: Option<String>) -> Diagnostic {
    let diagnostic = CODE.report(format!("no report has the code `{slug}`"));
    match suggestion {
        Some(nearest) => diagnostic.help(format!("did you mean `{nearest}`?")),
        None => diagnostic.help("list all codes with `pelmet explain --list`"),
    }
}
