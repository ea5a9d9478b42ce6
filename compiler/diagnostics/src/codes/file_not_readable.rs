//! A file that the machine will not give.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "file-not-readable",
    severity: Severity::Error,
    page: "\
The file is there, and the machine refuses to give its text: this user may not read it, another
program holds it, or the disk is at fault. The report repeats what the machine says.

Close the other program, or let yourself read the file, and run again.
",
    failing: Example::Told(
        "A file that belongs to another user of the machine, and only they may read it.",
    ),
    mend: Example::Told("The same file, after its owner has let everyone read it."),
};

/// The machine does not let a file be read.
pub struct FileNotReadable<'a> {
    /// Where a design names it, if one does.
    pub place: Option<Span>,
    /// The path by which the file was named.
    pub path: &'a str,
    /// What the machine says.
    pub reason: &'a str,
}

impl From<FileNotReadable<'_>> for Diagnostic {
    fn from(told: FileNotReadable<'_>) -> Diagnostic {
        let FileNotReadable {
            place,
            path,
            reason,
        } = told;
        CODE.report(format!("the file `{path}` cannot be read"))
            .label_if_known(place, "this file cannot be read")
            .sum(format!("the machine says: {reason}"))
            .help("close other programs that use it, and check that you may read it")
    }
}
