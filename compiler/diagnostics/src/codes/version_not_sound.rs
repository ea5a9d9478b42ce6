//! A version of a design that makes no packet to compare.

use crate::{Code, Diagnostic, Example, Severity};

/// A version of a design that makes no packet to compare.
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

/// The version `which` (before, after) of a design, at `path`, makes no packet.
pub fn version_not_sound(which: &str, path: &str) -> Diagnostic {
    CODE.report(format!(
        "the version {which}, `{path}`, makes no packet, so nothing can be compared with it"
    ))
    .help("put its mistakes right, or name its packet instead")
}
