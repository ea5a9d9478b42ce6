//! A property that an item cannot do without.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
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

/// An item lacks a property that it needs.
pub struct PropertyMissing<'a> {
    /// The name of the item.
    pub span: Span,
    /// What it is, as a sentence names it: "the fabric `kelp-stripe`".
    pub item: &'a str,
    /// What is missing: "width".
    pub property: &'a str,
    /// What to add: "width: 54 in".
    pub line: &'a str,
}

impl From<PropertyMissing<'_>> for Diagnostic {
    fn from(told: PropertyMissing<'_>) -> Diagnostic {
        let PropertyMissing {
            span,
            item,
            property,
            line,
        } = told;
        CODE.report(format!("{item} has no `{property}`"))
            .label(span, format!("`{property}` is missing here"))
            .help(format!("add a line such as `{line}`"))
    }
}
