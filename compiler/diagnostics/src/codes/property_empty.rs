//! A property without a value.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "property-empty",
    severity: Severity::Error,
    page: "\
The line names a property, and nothing follows the colon.

Write the value. If the property is not to be given, take out the whole line: what is then assumed is
told in a note.
",
    failing: Example::Text("\
fabric kelp-stripe {
    width: 54 in
    way:
}
"),
    mend: Example::Text("\
fabric kelp-stripe {
    width: 54 in
    way: one-way
}
"),
};

/// Nothing follows the colon of a property.
pub struct PropertyEmpty<'a> {
    /// The property, as far as its colon.
    pub span: Span,
    /// What it is called: "drop".
    pub property: &'a str,
    /// The same with a value: "drop: 17 in".
    pub line: &'a str,
}

impl From<PropertyEmpty<'_>> for Diagnostic {
    fn from(told: PropertyEmpty<'_>) -> Diagnostic {
        let PropertyEmpty {
            span,
            property,
            line,
        } = told;
        CODE.report(format!("`{property}` has no value"))
            .label(span, "nothing follows the colon")
            .help(format!(
                "write a value, such as `{line}`, or take out the line"
            ))
    }
}
