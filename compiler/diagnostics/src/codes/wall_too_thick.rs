//! A tube whose wall is thicker than its half.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "wall-too-thick",
    severity: Severity::Error,
    page: "\
The wall of a tube is measured from the outside to the hollow. Twice the wall cannot be more than
the rod is across.

Write the wall's thickness; leave `wall` out for a solid rod.
",
    failing: Example::Text(
        "\
rod pole { length: 72 in, diameter: 1 in, wall: 3/4 in }
",
    ),
    mend: Example::Text(
        "\
rod pole { length: 72 in, diameter: 1 in, wall: 1/16 in }
",
    ),
};

/// The wall of a tube is thicker than half the tube.
pub struct WallTooThick {
    /// Where it was written.
    pub span: Span,
    /// How thick the wall is said to be.
    pub wall: String,
    /// How thick the tube is.
    pub diameter: String,
}

impl From<WallTooThick> for Diagnostic {
    fn from(told: WallTooThick) -> Diagnostic {
        let WallTooThick {
            span,
            wall,
            diameter,
        } = told;
        CODE.report(format!(
            "a wall of {wall} does not fit in a rod {diameter} across"
        ))
        .label(span, "the wall of the tube")
        .sum(format!("2 x {wall} is more than {diameter}"))
        .help("write the thickness of the tube's wall, or leave `wall` out for a solid rod")
    }
}
