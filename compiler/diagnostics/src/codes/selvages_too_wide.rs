//! Selvages that leave no cloth between them.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "selvages-too-wide",
    severity: Severity::Error,
    page: "\
The selvage is the woven edge on each side of the bolt. Both together leave nothing of this cloth's
width to cut from.

Measure one selvage, not both, and the whole width of the bolt.
",
    failing: Example::Text(
        "\
fabric braid { width: 2 in, selvage: 1 in }
",
    ),
    mend: Example::Text(
        "\
fabric braid { width: 2 in, selvage: 1/8 in }
",
    ),
};

/// The two selvages of a cloth leave nothing between them.
pub struct SelvagesTooWide {
    /// Where the selvage was written.
    pub span: Span,
    /// How wide each is.
    pub selvage: String,
    /// How wide the cloth is.
    pub width: String,
}

impl From<SelvagesTooWide> for Diagnostic {
    fn from(told: SelvagesTooWide) -> Diagnostic {
        let SelvagesTooWide {
            span,
            selvage,
            width,
        } = told;
        CODE.report(format!(
            "two selvages of {selvage} leave nothing of a width of {width}"
        ))
        .label(span, "one selvage, of which there are two")
        .sum(format!("{width} - 2 x {selvage} leaves nothing to cut"))
        .help("write the width of one selvage")
    }
}
