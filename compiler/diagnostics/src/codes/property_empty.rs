//! A property without a value.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// A property without a value.
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

/// A property has no value.
pub struct PropertyEmpty<'a> {
    /// The property.
    pub span: Span,
    /// Its name.
    pub property: &'a str,
    /// A line in which it has one.
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
