//! A list of windows in which a window, or the column of names, is missing.

use crate::example::windows_from;
use crate::{Code, Diagnostic, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "list-without-names",
    severity: Severity::Error,
    page: "\
A list of windows begins with a line that names its columns, one of them `name`; every line after it
is one window and begins its sheets with that name.

Add the column, or the name that is missing from the line.
",
    failing: windows_from! { "\
room,rod,drop
bay,pole(40 in),12 in
" },
    mend: windows_from! { "\
name,rod,drop
bay,pole(40 in),12 in
" },
};

/// The list, or the line of it at `span`, says no name.
pub fn list_without_names(span: Span) -> Diagnostic {
    CODE.report("this list of windows does not name its windows")
        .label(span, "no name is given here")
        .help("the first line names the columns, `name` among them; give every window a name below it")
}
