//! More values given than a template asks for.

use crate::{Code, Diagnostic, Example, Severity, Span, counted, listed};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "too-many-arguments",
    severity: Severity::Error,
    page: "\
A template lists in round brackets the values it asks for, and they are given in that order. Here more
are given than are listed, so one of them is not wanted or a value before it was written twice.

The last value would go nowhere, and those before it may stand in each other's places.

Take out the value that is not asked for.
",
    failing: Example::Text(
        "\
rod brass-pole(length) { length: length, diameter: 1 1/8 in }
rod long-pole like brass-pole(72 in, 1 in)
",
    ),
    mend: Example::Text(
        "\
rod brass-pole(length) { length: length, diameter: 1 1/8 in }
rod long-pole like brass-pole(72 in)
",
    ),
};

/// The value at `span` is the first beyond those that `template` asks for, which are `known`.
pub fn too_many_arguments(span: Span, template: &str, known: &[&str]) -> Diagnostic {
    let diagnostic = CODE
        .report(format!("`{template}` is given more than it asks for"))
        .label(span, "not asked for");
    if known.is_empty() {
        return diagnostic.help(format!("write `{template}` alone; nothing is asked for"));
    }
    diagnostic.help(format!(
        "`{template}` takes {}: {}",
        counted(known.len(), "value"),
        listed(known, "and")
    ))
}
