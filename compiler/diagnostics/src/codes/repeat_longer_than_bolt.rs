//! A print that does not come round once on a whole bolt.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// A print that does not come round once on a whole bolt.
pub const CODE: Code = Code {
    slug: "repeat-longer-than-bolt",
    severity: Severity::Error,
    page: "\
The print of this cloth comes round only after more than the longest length of it that is to be had, so
that no two pieces could ever be cut alike. One of the two lengths is measured or written wrongly.

Correct the repeat along the cloth, or the length of the bolt.
",
    failing: Example::Text(
        "\
fabric fern { width: 54 in, repeat: 25 yd along, bolt: 20 yd }
",
    ),
    mend: Example::Text(
        "\
fabric fern { width: 54 in, repeat: 25 in along, bolt: 20 yd }
",
    ),
};

/// The `repeat` along is `over` longer than the `bolt`.
pub fn repeat_longer_than_bolt(
    (repeat, repeat_text): (Span, &str),
    (bolt, bolt_text): (Span, &str),
    over: &str,
) -> Diagnostic {
    CODE.report(format!(
        "the print repeats every {repeat_text}, and a bolt is only {bolt_text} long"
    ))
    .label(repeat, format!("every {repeat_text} along"))
    .label(bolt, format!("{bolt_text} at the longest"))
    .sum(format!("{repeat_text} - {bolt_text} = {over} too long"))
    .help("correct the repeat along the cloth, or the length of the bolt")
}
