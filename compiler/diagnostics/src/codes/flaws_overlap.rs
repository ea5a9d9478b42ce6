//! Two flaws on one part of the cloth.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "flaws-overlap",
    severity: Severity::Error,
    page: "\
Two flaws of a cloth lie partly in the same place. Each stretch is left out once; where two are
stated for one place, one of them is probably measured or written wrongly, or said twice.

Correct the place of one, or write both as one flaw.
",
    failing: Example::Text(
        "\
fabric calico { width: 45 in, flaws: 3 yd to 3 yd 8 in, 3 yd 4 in to 4 yd }
",
    ),
    mend: Example::Text(
        "\
fabric calico { width: 45 in, flaws: 3 yd to 4 yd }
",
    ),
};

/// Two flaws of a cloth lie on the same part of it.
pub struct FlawsOverlap {
    /// The one written later, which is told first.
    pub flaw: Span,
    /// The one written earlier.
    pub other: Span,
}

impl From<FlawsOverlap> for Diagnostic {
    fn from(told: FlawsOverlap) -> Diagnostic {
        let FlawsOverlap { flaw, other } = told;
        CODE.report("two flaws lie on the same part of the cloth")
            .label(flaw, "this one")
            .label(other, "and this one")
            .help("write both as one flaw, or correct the place of one")
    }
}
