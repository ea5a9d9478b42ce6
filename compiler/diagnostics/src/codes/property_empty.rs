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

/// `property` at `span` has no value; `line` is an example of one that has.
pub fn property_empty(span: Span, property: &str, line: &str) -> Diagnostic {
    CODE.report(format!("`{property}` has no value"))
        .label(span, "nothing follows the colon")
        .help(format!(
            "write a value, such as `{line}`, or take out the line"
        ))
}
