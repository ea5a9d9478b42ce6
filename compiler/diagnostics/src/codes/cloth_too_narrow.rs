//! A cloth with no usable width.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "cloth-too-narrow",
    severity: Severity::Error,
    page: "\
The usable width of a cloth is its width without the selvages. A strip of it also loses the seam
allowance where it is joined to the next. Here that leaves too little to make a strip of.

No number of strips makes a panel if each adds nothing to it.

Correct the width or the selvage of the cloth, or choose a wider one.
",
    failing: one_window! {
        fabric: "width: 12 in, selvage: 1 in",
        panel: ["finished width: 40 in", "drop: 14 in"],
    },
    mend: one_window! {
        fabric: "width: 54 in, selvage: 1 in",
        panel: ["finished width: 40 in", "drop: 14 in"],
    },
};

/// The usable width of a cloth is less than a strip needs.
pub struct ClothTooNarrow {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// Which layer it is: "face", "lining".
    pub layer: &'static str,
    /// Where the panel names the cloth.
    pub cloth: Span,
    /// Where the cloth was described, if that is known.
    pub fabric: Option<Span>,
    /// The width of the cloth without its selvages.
    pub usable: String,
    /// What a strip needs more than.
    pub needed: String,
}

impl From<ClothTooNarrow> for Diagnostic {
    fn from(told: ClothTooNarrow) -> Diagnostic {
        let ClothTooNarrow {
            panel,
            layer,
            cloth,
            fabric,
            usable,
            needed,
        } = told;
        CODE.report(format!(
            "the {layer} of {panel} cannot be cut from a usable width of {usable}"
        ))
        .label(cloth, format!("the cloth of the {layer}"))
        .label_if_known(fabric, format!("{usable} without its selvages"))
        .sum(format!(
            "{usable} usable, and a strip needs {needed} at the least"
        ))
        .help("choose a wider cloth, or correct its width or selvage")
    }
}
