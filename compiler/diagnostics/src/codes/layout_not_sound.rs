//! A layout that its own checker refuses.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "layout-not-sound",
    severity: Severity::Error,
    page: "\
Every layout is checked by a part of pelmet that shares nothing with the part that makes it: no two
pieces may overlap, none may lie off the cloth or off the print, and each must be there as often as
it is to be cut. This layout did not pass, or none could be made, so no packet is made of it.

The mistake is in pelmet and not in the design. Please report it, with the file.
",
    failing: Example::Told("No design shows this as long as pelmet does what it should."),
    mend: Example::Told(
        "Report it with the file; another width of cloth or size of panel may go around it meanwhile.",
    ),
};

/// The layout of the cloth called `name` is not sound; `findings` are those of its checker, in words.
pub fn layout_not_sound(name: &str, fabric: Option<Span>, findings: Vec<String>) -> Diagnostic {
    let diagnostic = CODE
        .report(format!("the layout of `{name}` did not pass its check"))
        .label_if_known(fabric, "the layout of this cloth");
    findings
        .into_iter()
        .fold(diagnostic, Diagnostic::sum)
        .help("this is a mistake in pelmet: please report it, with the file")
}
