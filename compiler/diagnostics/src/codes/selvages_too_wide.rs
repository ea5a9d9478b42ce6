//! Selvages that leave no cloth between them.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Selvages that leave no cloth between them.
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

/// The `selvage` at `span`, on each side, uses up the whole `width`.
pub fn selvages_too_wide(span: Span, selvage: &str, width: &str) -> Diagnostic {
    CODE.report(format!(
        "two selvages of {selvage} leave nothing of a width of {width}"
    ))
    .label(span, "one selvage, of which there are two")
    .sum(format!("{width} - 2 x {selvage} leaves nothing to cut"))
    .help("write the width of one selvage")
}
