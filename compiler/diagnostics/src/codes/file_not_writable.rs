//! A file or folder that the machine will not let be written.

use crate::{Code, Diagnostic, Example, Severity};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "file-not-writable",
    severity: Severity::Error,
    page: "\
The machine refuses to write the file or folder: this user may not write there, the disk is full, or
another program holds it. The report repeats what the machine says.

A packet is written whole or not at all, so whatever stood there before is as it was.

Make room, close the other program, or write somewhere else.
",
    failing: Example::Told("Building a packet into a folder of another user of the machine."),
    mend: Example::Told("Building it into a folder of your own."),
};

/// The machine does not let something be written.
pub struct FileNotWritable<'a> {
    /// The file or folder that was to be written.
    pub path: &'a str,
    /// What the machine says.
    pub reason: &'a str,
}

impl From<FileNotWritable<'_>> for Diagnostic {
    fn from(told: FileNotWritable<'_>) -> Diagnostic {
        let FileNotWritable { path, reason } = told;
        CODE.report(format!("`{path}` cannot be written"))
            .sum(format!("the machine says: {reason}"))
            .help("check that there is room and that you may write there, or write somewhere else")
    }
}
