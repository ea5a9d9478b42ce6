//! A design to be built that has no window in it.

use crate::{Code, Diagnostic, Example, Severity};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "nothing-to-make",
    severity: Severity::Error,
    page: "\
Sheets are made for windows. This file, with all it uses, describes cloth, panels or a house style
but no window.

Build the file that has the windows, or add a window. `pelmet check` is the command for a house
style alone.
",
    failing: Example::Told("Building a file that describes two cloths and a rod, and no window."),
    mend: Example::Told("Building the file of the job, which uses that one and has the windows."),
};

/// The main file at `path`, with all it uses, describes no window.
pub fn nothing_to_make(path: &str) -> Diagnostic {
    CODE.report(format!("`{path}` has no window to make"))
        .help("build the file that has the windows, or add one: `window porch: valance { … }`")
}
