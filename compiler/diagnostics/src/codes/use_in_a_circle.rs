//! Files that use each other in a circle.

use crate::{Code, Diagnostic, Example, PlacedText, Severity};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "use-in-a-circle",
    severity: Severity::Error,
    page: "\
A file uses a second one, which by some way uses the first again. No file then stands on its own, and
a change in any of them changes all.

Move what they share into a file of its own, and let both use that one.
",
    failing: Example::Files(&[
        ("main.pelmet", "use \"style.pelmet\"\n"),
        ("style.pelmet", "use \"main.pelmet\"\n"),
    ]),
    mend: Example::Files(&[
        ("main.pelmet", "use \"style.pelmet\"\n"),
        ("style.pelmet", "units inches\n"),
    ]),
};

/// Each of `steps` is a `use` line and the file it names; the last one names the file of the first.
pub fn use_in_a_circle(steps: &[PlacedText]) -> Diagnostic {
    let diagnostic = CODE
        .report("files use each other in a circle")
        .help("move what they share into a file of its own, which both use");
    steps.iter().fold(diagnostic, |diagnostic, step| {
        diagnostic.label(step.span, format!("uses `{step}`"))
    })
}
