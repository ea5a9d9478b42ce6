//! A size that comes out at nothing, or less.

use crate::example::one_window;
use crate::{Code, Diagnostic, PlacedText, Severity};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "nothing-left",
    severity: Severity::Error,
    page: "\
When everything is taken off that has to be taken off, such as the allowances or the cloth in the
pleats, a size of the panel is nothing or less than nothing.

There is nothing to cut.

Make the size it is worked out from larger, or what is taken off it smaller.
",
    failing: one_window! {
        panel: ["cut width: 1/2 in", "drop: 14 in"],
    },
    mend: one_window! {
        panel: ["cut width: 41 in", "drop: 14 in"],
    },
};

/// A size of a panel comes out at nothing, or less.
pub struct NothingLeft<'a> {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// Which size: "flat width".
    pub size: &'a str,
    /// What it comes out at; at the place of what it is worked out from.
    pub length: PlacedText,
    /// How it comes about, where it is worked out from another size.
    pub sum: Option<String>,
}

impl From<NothingLeft<'_>> for Diagnostic {
    fn from(told: NothingLeft<'_>) -> Diagnostic {
        let NothingLeft {
            panel,
            size,
            length,
            sum,
        } = told;
        let diagnostic = CODE
            .report(format!("the {size} of {panel} comes out at {length}"))
            .label(length.span, format!("leaves a {size} of {length}"));
        sum.into_iter()
            .fold(diagnostic, Diagnostic::sum)
            .help("make what it is worked out from larger, or what is taken off smaller")
    }
}
