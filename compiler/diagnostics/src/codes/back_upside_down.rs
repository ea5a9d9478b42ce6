//! A lining folded up from a face that has a way up.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "back-upside-down",
    severity: Severity::Note,
    page: "\
The making method folds the lining up from the face, and the cloth has a way up. The back half then
hangs upside down.

From the room it is not seen but where a pleat turns the back to the front; from outside the window
it is. A pile that runs down in front runs up behind.

If that will not do, line the panel with a piece of its own: choose a making method with a lining.
",
    failing: one_window! {
        fabric: "width: 54 in, way: one-way",
        make: "seam: 1/2 in, lining: self",
        panel: ["finished width: 40 in", "drop: 14 in"],
    },
    mend: one_window! {
        fabric: "width: 54 in, way: any",
        make: "seam: 1/2 in, lining: self",
        panel: ["finished width: 40 in", "drop: 14 in"],
    },
};

/// A lining is folded up from a face that has a way up, so that its print hangs upside down.
pub struct BackUpsideDown {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// Where the panel names its face.
    pub face: Span,
    /// Where the method folds the lining up, or else was named.
    pub lining: Span,
}

impl From<BackUpsideDown> for Diagnostic {
    fn from(told: BackUpsideDown) -> Diagnostic {
        let BackUpsideDown {
            panel,
            face,
            lining,
        } = told;
        CODE.report(format!(
            "the back of {panel} hangs upside down: it is folded up from a face that has a way up"
        ))
        .label(face, "this cloth is one-way")
        .label(lining, "this method folds the lining up from the face")
        .help("line the panel with a piece of its own if the back is seen")
    }
}
