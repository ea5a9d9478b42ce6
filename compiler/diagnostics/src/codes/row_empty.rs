//! A row with no panel in it.

use crate::example::one_window;
use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "row-empty",
    severity: Severity::Error,
    page: "\
The row names no panel, so nothing hangs at the window.

The row says which panels hang on the rod, from left to right, each as often as it hangs.

Name the panels: `row: wing, bib, wing`.
",
    failing: Example::Told(
        "A treatment made by a program, with no panel in its row. A text cannot say so: `row:` needs a name.",
    ),
    mend: one_window! {
        panel: ["finished width: 40 in", "drop: 14 in"],
        row: "front",
    },
};

/// The row of `window` names no panel; `panel` is one that could hang there.
pub fn row_empty(window: &str, row: Span, panel: Option<&str>) -> Diagnostic {
    let panel = panel.unwrap_or("front");
    CODE.report(format!("the row of {window} is empty"))
        .label(row, "no panel hangs here")
        .help(format!(
            "name the panels from left to right, such as `row: {panel}`"
        ))
}
