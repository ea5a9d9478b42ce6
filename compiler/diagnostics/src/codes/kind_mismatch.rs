//! Two quantities that do not go together in a sum.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Two quantities that do not go together in a sum.
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

/// `left` and `right` do not go together under the sign at `operator`; their kinds have articles:
/// "a length", "a plain number".
pub fn kind_mismatch(
    operator: Span,
    sign: char,
    (left, left_kind): (Span, &str),
    (right, right_kind): (Span, &str),
) -> Diagnostic {
    let (doing, help) = in_words(sign);
    CODE.report(format!("{left_kind} and {right_kind} cannot be {doing}"))
        .label(operator, format!("cannot be {doing}"))
        .label(left, format!("this is {left_kind}"))
        .label(right, format!("this is {right_kind}"))
        .help(help)
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
