//! A lining or interlining that shrinks more than its face.

use crate::example::one_window;
use crate::{Code, Diagnostic, PlacedText, Severity};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "lining-shrinks-more",
    severity: Severity::Warning,
    page: "\
In the first press or wash the lining or the interlining loses more of its length than the face does.

It then pulls the panel up: the face bags over it and the lower edge curls to the back.

Press it well before cutting, or choose a cloth that shrinks no more than the face.
",
    failing: one_window! {
        fabric: "width: 54 in, shrinkage: 2 %",
        make: "seam: 1/2 in, lining: as face",
        items: "fabric sateen { width: 54 in, shrinkage: 5 % }\n",
        panel: ["finished width: 40 in", "drop: 14 in", "lining: sateen"],
    },
    mend: one_window! {
        fabric: "width: 54 in, shrinkage: 2 %",
        make: "seam: 1/2 in, lining: as face",
        items: "fabric sateen { width: 54 in, shrinkage: 2 % }\n",
        panel: ["finished width: 40 in", "drop: 14 in", "lining: sateen"],
    },
};

/// A cloth behind the face shrinks more than the face.
pub struct LiningShrinksMore {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// Which layer it is: "face", "lining".
    pub layer: &'static str,
    /// By how many percent the cloth behind shrinks.
    pub behind: PlacedText,
    /// By how many percent the face shrinks.
    pub face: PlacedText,
    /// By how many percent that is more.
    pub more: String,
    /// How long the panel is, over which that tells.
    pub drop: String,
    /// How much shorter than the face that makes it.
    pub shorter: String,
}

impl From<LiningShrinksMore> for Diagnostic {
    fn from(told: LiningShrinksMore) -> Diagnostic {
        let LiningShrinksMore {
            panel,
            layer,
            behind,
            face,
            more,
            drop,
            shorter,
        } = told;
        CODE.report(format!("the {layer} of {panel} shrinks more than its face"))
            .label(behind.span, format!("shrinks by {behind} %"))
            .label(face.span, format!("shrinks by {face} %"))
            .sum(format!(
                "{behind} % of the {layer} - {face} % of the face = {more} % more"
            ))
            .sum(format!(
                "{more} % of a drop of {drop} = {shorter} shorter than the face"
            ))
            .help(format!(
                "press the {layer} before cutting, or choose one that shrinks by {face} % at most"
            ))
    }
}
