//! A treatment that is made of itself.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// A treatment that is made of itself.
pub const CODE: Code = Code {
    slug: "template-in-a-circle",
    severity: Severity::Error,
    page: "\
A treatment, outline or pleat rule uses itself, at once or by way of others. Filled in, it would never
come to an end.

Take the part that both need out into one of its own, and let both use that.
",
    failing: Example::Text("\
treatment inner { row: outer }
treatment outer { row: inner }
"),
    mend: Example::Text("\
treatment inner {
    panel wing { finished width: 18 in, drop: 15 in }
    row: wing
}
"),
};

/// Each of `steps` is the use of a template, by its name, and the place of the use; the last one
/// names the template in which the first stands.
pub fn template_in_a_circle(steps: &[(Span, String)]) -> Diagnostic {
    let title = match steps.last() {
        Some((_, name)) => format!("`{name}` is made of itself"),
        None => "a template is made of itself".to_owned(),
    };
    let report = CODE
        .report(title)
        .help("move the part that is shared into one of its own");
    steps.iter().fold(report, |report, (span, name)| {
        report.label(*span, format!("uses `{name}`"))
    })
}
