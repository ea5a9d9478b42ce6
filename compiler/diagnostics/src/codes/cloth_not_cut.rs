//! A cloth asked about from which nothing is cut.

use crate::{Code, Diagnostic, Example, Severity};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "cloth-not-cut",
    severity: Severity::Error,
    page: "\
`pelmet cloths` lays a job out with another cloth in the place of one of its own. Nothing of this job is
cut from the cloth that was named, so there is no place for another to take.

Name a cloth that a panel of the job is made of, or none, to compare them all.
",
    failing: Example::Told("Asking `pelmet cloths` about a cloth that no panel is made of."),
    mend: Example::Told("Asking it about the cloth of a panel."),
};

/// Nothing of the job is cut from the cloth called `name`.
pub fn cloth_not_cut(name: &str) -> Diagnostic {
    CODE.report(format!("nothing of this job is cut from `{name}`"))
        .help("name a cloth that a panel is made of, or none, to compare them all")
}
