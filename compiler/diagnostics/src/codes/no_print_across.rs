//! Pleats that follow a print the cloth does not have.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "no-print-across",
    severity: Severity::Error,
    page: "\
The pleat rule says that its spaces or depths follow the print, so that the same part of it shows on
every pleat. The face cloth has no print that repeats across its width.

Say the cloth's repeat across, or take `print` out of the rule.
",
    failing: one_window! {
        items: "\
pleats on-stripes {
    print: spaces follow
    margin 1 in to 30 in
    repeat 3 times: knife 1 in toward left, space 2 in to 6 in
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
    repeat 3 times: knife 1 in toward left, space 2 in to 6 in
    margin 1 in to 30 in
}
",
        panel: ["finished width: 40 in", "drop: 14 in", "pleats: on-stripes"],
    },
};

/// A pleat rule follows the print of a face that has none across.
pub struct NoPrintAcross {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// Where the panel names its face.
    pub face: Span,
    /// Where the panel names its pleats.
    pub pleats: Span,
}

impl From<NoPrintAcross> for Diagnostic {
    fn from(told: NoPrintAcross) -> Diagnostic {
        let NoPrintAcross {
            panel,
            face,
            pleats,
        } = told;
        CODE.report(format!(
            "the pleats of {panel} follow a print that its face does not have"
        ))
        .label(face, "no print repeats across this cloth")
        .label(pleats, "this rule follows the print")
        .help("say the repeat across, such as `repeat: 12 in along, 9 in across`")
    }
}
