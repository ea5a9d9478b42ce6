//! A piece joined from more widths of cloth than the limit.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "too-many-widths",
    severity: Severity::Error,
    page: "\
The panel is so much wider than its cloth that it would be joined from more widths than the limit.

No panel is joined from so many. The width of the panel or of the cloth is probably in another unit
than was meant.

Correct the width of the cloth or of the panel.
",
    failing: one_window! {
        rod: "length: 5000 m, diameter: 1 in",
        panel: ["finished width: 5000 m", "drop: 14 in"],
    },
    mend: one_window! {
        rod: "length: 5 m, diameter: 1 in",
        panel: ["finished width: 5 m", "drop: 14 in"],
    },
};

/// A piece would be joined from more widths of cloth than are worked out.
pub struct TooManyWidths {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// Which layer it is: "face", "lining".
    pub layer: &'static str,
    /// Where the panel names the cloth.
    pub cloth: Span,
    /// Where the width of the panel was stated.
    pub width: Span,
    /// The most widths that a piece may have.
    pub limit: u32,
}

impl From<TooManyWidths> for Diagnostic {
    fn from(told: TooManyWidths) -> Diagnostic {
        let TooManyWidths {
            panel,
            layer,
            cloth,
            width,
            limit,
        } = told;
        CODE.report(format!(
            "the {layer} of {panel} would be joined from more than {limit} widths"
        ))
        .label(cloth, format!("more than {limit} widths of this cloth"))
        .label(width, "the width of the panel")
        .help("look for a unit that is wrong in the width of the panel or of the cloth")
    }
}
