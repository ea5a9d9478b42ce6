//! Things that are like each other in a circle.

use crate::{Code, Diagnostic, Example, PlacedText, Severity};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "like-in-a-circle",
    severity: Severity::Error,
    page: "\
`like` copies the properties of another thing. Here the things copy from each other in a circle, so
that none of them has properties of its own to begin with.

Describe one of them in full, and let the others be like it.
",
    failing: Example::Text(
        "\
fabric kelp-stripe like sand-twill { width: 54 in }
fabric sand-twill like kelp-stripe { width: 48 in }
",
    ),
    mend: Example::Text(
        "\
fabric kelp-stripe { width: 54 in }
fabric sand-twill like kelp-stripe { width: 48 in }
",
    ),
};

/// Each of `steps` is the name after a `like` and its place; the last one names the thing of the
/// first.
pub fn like_in_a_circle(steps: &[PlacedText]) -> Diagnostic {
    let diagnostic = CODE
        .report("things are like each other in a circle")
        .help("describe one of them in full, and let the others be like it");
    steps.iter().fold(diagnostic, |diagnostic, step| {
        diagnostic.label(step.span, format!("like `{step}`"))
    })
}
