//! Two quantities that do not go together in a sum.

use crate::{Code, Diagnostic, Example, PlacedText, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "kind-mismatch",
    severity: Severity::Error,
    page: "\
The two sides of a sign are of kinds that do not go together: a length and a weight cannot be added,
and a plain number cannot be divided by a length.

No guess at what was meant would be cut right.

Correct the unit, or use the sign that was meant: a length can be added to a length, and multiplied
and divided by a plain number.
",
    failing: Example::Text("fabric kelp-stripe { width: 54 in + 210 g/m2 }\n"),
    mend: Example::Text("fabric kelp-stripe { width: 54 in + 3 in }\n"),
};

/// Two values do not go together under the sign between them.
pub struct KindMismatch {
    /// Where the sign stands, which is told first.
    pub operator: Span,
    /// `+`, `-`, `*` or `/`.
    pub sign: char,
    /// The kind of the value before it, with its article: "a length".
    pub left: PlacedText,
    /// The kind of the value after it, with its article: "a plain number".
    pub right: PlacedText,
}

impl From<KindMismatch> for Diagnostic {
    fn from(told: KindMismatch) -> Diagnostic {
        let KindMismatch {
            operator,
            sign,
            left,
            right,
        } = told;
        let (doing, help) = in_words(sign);
        CODE.report(format!("{left} and {right} cannot be {doing}"))
            .label(operator, format!("cannot be {doing}"))
            .label(left.span, format!("this is {left}"))
            .label(right.span, format!("this is {right}"))
            .help(help)
    }
}

/// What a sign does, and what may stand on its two sides.
fn in_words(sign: char) -> (&'static str, &'static str) {
    match sign {
        '+' => ("added", "write both with a unit, or both without"),
        '-' => ("subtracted", "write both with a unit, or both without"),
        '*' => (
            "multiplied",
            "multiply by a plain number, written without a unit",
        ),
        _ => (
            "divided",
            "divide by a plain number, or by a quantity of the same kind",
        ),
    }
}
