//! A design to be built that has no window in it.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// A design to be built that has no window in it.
pub const CODE: Code = Code {
    slug: "nothing-to-make",
    severity: Severity::Error,
    page: "\
Sheets are made for windows. This file, with all it uses, describes cloth, panels or a house style
but no window.

Build the file that has the windows, or add a window. `pelmet check` is the command for a house
style alone.
",
    failing: Example::Text(
        "\
fabric calico { width: 45 in }
",
    ),
    mend: Example::Text(
        "\
fabric calico { width: 45 in }
rod pole { length: 40 in, diameter: 1 in }
make seamed { seam: 1/2 in, lining: none }
treatment valance {
    panel front {
        finished width: fill
        drop: 12 in
        head: over rod, tail 3 in
        make: seamed
        face: calico
    }
    row: front
}
window porch: valance { rod: pole }
",
    ),
};

/// The main file, which begins at `span`, makes no window.
pub fn nothing_to_make(span: Option<Span>, file: &str) -> Diagnostic {
    CODE.report(format!("`{file}` has no window to make"))
        .label_if_known(span, "no window is described from here on")
        .help("build the file that has the windows, or add one: `window porch: valance { ... }`")
}
