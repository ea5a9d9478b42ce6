//! A name that stands for itself.

use crate::{Code, Diagnostic, Example, PlacedText, Severity};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "name-in-a-circle",
    severity: Severity::Error,
    page: "\
Following this name leads from one name to the next and back to where it began, so it stands for
nothing that could be measured.

Give one of the names in the circle a measure of its own.
",
    failing: Example::Text(
        "\
measure hem: turn + 1 in
measure turn: hem - 1 in
",
    ),
    mend: Example::Text(
        "\
measure hem: turn + 1 in
measure turn: 1 in
",
    ),
};

/// The values at the places of `steps`, each with its text, stand for one another in a circle.
pub fn name_in_a_circle(steps: &[PlacedText]) -> Diagnostic {
    let typed = steps.first().map_or("", |step| &*step.text);
    let diagnostic = CODE.report(format!("`{typed}` stands for itself in the end"));
    let labelled = steps.iter().fold(diagnostic, |diagnostic, step| {
        diagnostic.label(step.span, format!("`{step}` is part of the circle"))
    });
    labelled.help("give one of the names in the circle a measure of its own")
}
