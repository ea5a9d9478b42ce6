//! A print that does not come round once on a whole bolt.

use crate::{Code, Diagnostic, Example, PlacedText, Severity};

/// Its page for `pelmet explain`, with an example and the mend.
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

/// The print of a cloth repeats less often than once in a bolt.
pub struct RepeatLongerThanBolt {
    /// How often it repeats along the cloth.
    pub repeat: PlacedText,
    /// The longest piece that the cloth comes in.
    pub bolt: PlacedText,
    /// How much the repeat is longer.
    pub over: String,
}

impl From<RepeatLongerThanBolt> for Diagnostic {
    fn from(told: RepeatLongerThanBolt) -> Diagnostic {
        let RepeatLongerThanBolt { repeat, bolt, over } = told;
        CODE.report(format!(
            "the print repeats every {repeat}, and a bolt is only {bolt} long"
        ))
        .label(repeat.span, format!("every {repeat} along"))
        .label(bolt.span, format!("{bolt} at the longest"))
        .sum(format!("{repeat} - {bolt} = {over} too long"))
        .help("correct the repeat along the cloth, or the length of the bolt")
    }
}
