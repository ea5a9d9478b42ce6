//! A space or depth whose range never brings the print round.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "print-out-of-reach",
    severity: Severity::Error,
    page: "\
The pleats follow the print: from the middle of one pleat to the middle of the next, the flat cloth
must come to whole repeats. Nothing in the range of this length does that.

Widen the range to one of the two lengths named, or change the depth of the pleats.
",
    failing: one_window! {
        fabric: "width: 54 in, repeat: 4 in across",
        items: "\
pleats on-stripes {
    print: spaces follow
    margin 1 in to 30 in
    repeat 3 times: knife 1 in toward left, space 3 in to 5 in
    margin 1 in to 30 in
}
",
        panel: ["finished width: 40 in", "drop: 14 in", "pleats: on-stripes"],
    },
    mend: one_window! {
        fabric: "width: 54 in, repeat: 4 in across",
        items: "\
pleats on-stripes {
    print: spaces follow
    margin 1 in to 30 in
    repeat 3 times: knife 1 in toward left, space 2 in to 5 in
    margin 1 in to 30 in
}
",
        panel: ["finished width: 40 in", "drop: 14 in", "pleats: on-stripes"],
    },
};

/// No length that a step allows brings the print round to the next pleat.
pub struct PrintOutOfReach {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// The step that should give way.
    pub step: Span,
    /// Where the panel names its pleats.
    pub pleats: Span,
    /// How often the print repeats across the cloth.
    pub repeat: String,
    /// The nearest lengths that would do, to be typed in.
    pub nearest: Vec<String>,
    /// A line of the sum for each of them.
    pub sums: Vec<String>,
}

impl From<PrintOutOfReach> for Diagnostic {
    fn from(told: PrintOutOfReach) -> Diagnostic {
        let PrintOutOfReach {
            panel,
            step,
            pleats,
            repeat,
            nearest,
            sums,
        } = told;
        let diagnostic = CODE
            .report(format!(
                "the print does not come round from pleat to pleat of {panel}"
            ))
            .label(
                step,
                format!("no length here gives whole repeats of {repeat}"),
            )
            .label(pleats, "pleated by this rule");
        sums.into_iter()
            .fold(diagnostic, Diagnostic::sum)
            .help(format!("allow {} here", nearest.join(" or ")))
    }
}
