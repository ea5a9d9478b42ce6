//! A property that an item cannot do without.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// A property that an item cannot do without.
pub const CODE: Code = Code {
    slug: "property-missing",
    severity: Severity::Error,
    page: "\
The item lacks a property that its sums begin with: a fabric without a width cannot be laid out, a rod
without a length cannot be covered.

Nothing is guessed, since a guess would be cut into cloth.

Add the line that the report shows, with your own measure in it.
",
    failing: Example::Text("fabric kelp-stripe { way: one-way }\n"),
    mend: Example::Text("fabric kelp-stripe { way: one-way, width: 54 in }\n"),
};

/// The `item` at `span` ("the fabric `kelp-stripe`") has no `property`; `line` is an example of it.
pub fn property_missing(span: Span, item: &str, property: &str, line: &str) -> Diagnostic {
    CODE.report(format!("{item} has no `{property}`"))
        .label(span, format!("`{property}` is missing here"))
        .help(format!("add a line such as `{line}`"))
}
