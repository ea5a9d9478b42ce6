//! A property given twice.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "property-twice",
    severity: Severity::Error,
    page: "\
One item gives the same property twice. Order does not matter in this language, so neither of the two
is the later one that would win.

Take one of them out. To change a property for one panel or window only, write it there; `like` copies
the rest.
",
    failing: Example::Text("fabric kelp-stripe { width: 54 in, width: 48 in }\n"),
    mend: Example::Text("fabric kelp-stripe { width: 54 in }\n"),
};

/// An item has the same property twice.
pub struct PropertyTwice<'a> {
    /// Where it is given again.
    pub second: Span,
    /// Where it is given the first time.
    pub first: Span,
    /// What it is called.
    pub property: &'a str,
}

impl From<PropertyTwice<'_>> for Diagnostic {
    fn from(told: PropertyTwice<'_>) -> Diagnostic {
        let PropertyTwice {
            second,
            first,
            property,
        } = told;
        CODE.report(format!("`{property}` is given twice"))
            .label(second, "and here again")
            .label(first, "given here")
            .help("take one of them out")
    }
}
