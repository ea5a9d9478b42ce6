//! A place on the cloth that is past its edge or its end.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "place-beyond-cloth",
    severity: Severity::Error,
    page: "\
A flaw, or the place where the print begins, is measured on the cloth itself: along it from the cut
end, across it from its left edge, selvage included. This place is past the end of a bolt or past
the right edge.

Measure again, or correct the length of the bolt or the width of the cloth.
",
    failing: Example::Text(
        "\
fabric calico { width: 45 in, bolt: 20 yd, flaws: 21 yd to 22 yd }
",
    ),
    mend: Example::Text(
        "\
fabric calico { width: 45 in, bolt: 20 yd, flaws: 11 yd to 12 yd }
",
    ),
};

/// A place on a cloth lies past its end or its edge.
pub struct PlaceBeyondCloth {
    /// What says where it lies, in the block of the cloth.
    pub span: Span,
    /// What is there: "the flaw reaches to".
    pub what: &'static str,
    /// How far along or across it lies.
    pub place: String,
    /// What ends before it: "a bolt is".
    pub cloth: &'static str,
    /// How long or wide that is.
    pub room: String,
    /// Which of the two: "long" or "wide".
    pub how: &'static str,
    /// How far past it the place lies.
    pub over: String,
}

impl From<PlaceBeyondCloth> for Diagnostic {
    fn from(told: PlaceBeyondCloth) -> Diagnostic {
        let PlaceBeyondCloth {
            span,
            what,
            place,
            cloth,
            room,
            how,
            over,
        } = told;
        CODE.report(format!("{what} {place}, but {cloth} only {room} {how}"))
            .label(span, format!("{over} past the cloth"))
            .sum(format!("{place} - {room} = {over} past the cloth"))
            .help("measure again: along the bolt from its cut end, across from the left edge")
    }
}
