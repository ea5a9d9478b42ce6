//! A panel cut on the fold whose halves are not alike.

use crate::example::one_window;
use crate::{Code, Diagnostic, Fix, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "halves-differ",
    severity: Severity::Error,
    page: "\
A piece cut on the fold is drawn at half its width and cut through doubled cloth, so its two halves
come out as mirror images. The outline of this panel has two unlike halves.

Cut on the fold, one half of the panel would be lost and the other made twice.

Cut the panel from open cloth, or draw its outline as a `half` one.
",
    failing: one_window! {
        items: "\
outline slanted whole {
    from (0, drop)
    to (width, drop - 2 in)
    up to heading
}
",
        panel: ["finished width: 40 in", "drop: 14 in", "outline: slanted", "cut: on fold"],
    },
    mend: one_window! {
        items: "\
outline slanted whole {
    from (0, drop)
    to (width, drop - 2 in)
    up to heading
}
",
        panel: ["finished width: 40 in", "drop: 14 in", "outline: slanted", "cut: open"],
    },
};

/// A panel is cut on the fold, and the two halves of its outline are unlike.
pub struct HalvesDiffer {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// Where it was said to be cut on the fold.
    pub cut: Span,
    /// Where the panel names its outline.
    pub outline: Span,
}

impl From<HalvesDiffer> for Diagnostic {
    fn from(told: HalvesDiffer) -> Diagnostic {
        let HalvesDiffer {
            panel,
            cut,
            outline,
        } = told;
        CODE.report(format!(
            "{panel} is cut on the fold, and its two halves differ"
        ))
        .label(cut, "two like halves are cut here")
        .label(outline, "this outline has two unlike ones")
        .help("write `cut: open`, or draw the outline as a `half` one")
        .fix(Fix::replace("cut it from open cloth", cut, "open"))
    }
}
