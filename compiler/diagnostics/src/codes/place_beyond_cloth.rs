//! A place on the cloth that is past its edge or its end.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// A place on the cloth that is past its edge or its end.
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

/// `what` ("the flaw reaches to") is at `place`, `over` past the cloth, in words ("a bolt is", "20 yd",
/// "long").
pub fn place_beyond_cloth(
    span: Span,
    (what, place): (&str, &str),
    (cloth, room, how): (&str, &str, &str),
    over: &str,
) -> Diagnostic {
    CODE.report(format!("{what} {place}, but {cloth} only {room} {how}"))
        .label(span, format!("{over} past the cloth"))
        .sum(format!("{place} - {room} = {over} past the cloth"))
        .help("measure again: along the bolt from its cut end, across from the left edge")
}
