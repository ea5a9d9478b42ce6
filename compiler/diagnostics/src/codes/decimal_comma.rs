//! A decimal comma.

use crate::{Code, Diagnostic, Example, Fix, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "decimal-comma",
    severity: Severity::Error,
    page: "\
A comma stands between two digits: `15,5 in`. It is read as fifteen and a half, the way many countries
write it. In this language commas part one thing from the next, so the parts of a number are divided
by a point or written as a fraction.

Read as two numbers, it would be 15 inches and 5 inches, and the cloth would be cut to one of them.

Write `15.5 in` or `15 1/2 in`. Where two numbers were meant, put a blank after the comma.
",
    failing: Example::Text("fabric kelp-stripe { width: 137,5 cm }\n"),
    mend: Example::Text("fabric kelp-stripe { width: 137.5 cm }\n"),
};

/// The number at `number` was `typed` with a comma.
pub fn decimal_comma(number: Span, typed: &str) -> Diagnostic {
    let point = typed.replace(',', ".");
    let blank = typed.replace(',', ", ");
    CODE.report(format!("`{typed}` has a decimal comma"))
        .label(number, format!("read as {point}"))
        .help(format!("write `{point}`"))
        .help(format!("if two numbers are meant, write `{blank}`"))
        .fix(Fix::replace(format!("write `{point}`"), number, point))
}
