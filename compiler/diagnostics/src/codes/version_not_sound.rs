//! A version of a design that makes no packet to compare.

use crate::{Code, Diagnostic, Example, Severity};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "version-not-sound",
    severity: Severity::Error,
    page: "\
What changed is told from two packets, and a design with mistakes makes none. The mistakes of this
version are reported like those of any other, each at its place.

Put them right, or compare with a version that is sound. Where only the packet of an old version is
sound, that can be compared instead: name its folder.
",
    failing: Example::Told("Comparing a design with last week's, in which a bracket is missing."),
    mend: Example::Told("Comparing it with last week's packet, built before the bracket was lost."),
};

/// A design that is to be compared makes no packet.
pub struct VersionNotSound<'a> {
    /// Which of the two it is: "before" or "after".
    pub which: &'a str,
    /// The path by which that one was named.
    pub path: &'a str,
}

impl From<VersionNotSound<'_>> for Diagnostic {
    fn from(told: VersionNotSound<'_>) -> Diagnostic {
        let VersionNotSound { which, path } = told;
        CODE.report(format!(
            "the version {which}, `{path}`, makes no packet, so nothing can be compared with it"
        ))
        .help("put its mistakes right, or name its packet instead")
    }
}
