//! A packet to compare that cannot be read.

use crate::{Code, Diagnostic, Example, Severity};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "packet-not-read",
    severity: Severity::Error,
    page: "\
A packet is compared by its `packet.json`, which holds the whole of it. This file is not one, was
changed by hand, or comes from a `pelmet` that writes packets otherwise.

Build the packet again from its design, or compare the designs themselves.
",
    failing: Example::Told("Comparing a design with the `packet.json` of another program."),
    mend: Example::Told(
        "Comparing it with the packet that `pelmet build` makes of its old version.",
    ),
};

/// A file is not a packet, or one of another version.
pub struct PacketNotRead<'a> {
    /// The path by which the file was named.
    pub path: &'a str,
    /// What stands in the way.
    pub reason: &'a str,
}

impl From<PacketNotRead<'_>> for Diagnostic {
    fn from(told: PacketNotRead<'_>) -> Diagnostic {
        let PacketNotRead { path, reason } = told;
        CODE.report(format!("`{path}` is not a packet that can be read"))
            .sum(reason.to_owned())
            .help("build it again from its design, or compare the designs themselves")
    }
}
