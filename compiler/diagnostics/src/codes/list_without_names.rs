//! A list of windows in which a window, or the column of names, is missing.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// A list of windows in which a window, or the column of names, is missing.
pub const CODE: Code = Code {
    slug: "list-without-names",
    severity: Severity::Error,
    page: "\
A list of windows begins with a line that names its columns, one of them `name`; every line after it
is one window and begins its sheets with that name.

Add the column, or the name that is missing from the line.
",
    failing: Example::Files(&[
        (
            "job.pelmet",
            "\
fabric calico { width: 45 in }
rod pole(length) { length: length, diameter: 1 in }
make seamed { seam: 1/2 in, lining: none }
treatment curtain(drop) {
    panel front {
        finished width: fill
        drop: drop
        head: over rod, tail 3 in
        make: seamed
        face: calico
    }
    row: front
}
windows from \"windows.csv\": curtain
",
        ),
        (
            "windows.csv",
            "\
room,rod,drop
bay,pole(40 in),12 in
",
        ),
    ]),
    mend: Example::Files(&[
        (
            "job.pelmet",
            "\
fabric calico { width: 45 in }
rod pole(length) { length: length, diameter: 1 in }
make seamed { seam: 1/2 in, lining: none }
treatment curtain(drop) {
    panel front {
        finished width: fill
        drop: drop
        head: over rod, tail 3 in
        make: seamed
        face: calico
    }
    row: front
}
windows from \"windows.csv\": curtain
",
        ),
        (
            "windows.csv",
            "\
name,rod,drop
bay,pole(40 in),12 in
",
        ),
    ]),
};

/// The list, or the line of it at `span`, says no name.
pub fn list_without_names(span: Span) -> Diagnostic {
    CODE.report("this list of windows does not name its windows")
        .label(span, "no name is given here")
        .help("the first line names the columns, `name` among them; give every window a name below it")
}
