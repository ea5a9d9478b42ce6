//! Two pleats with nothing between them that could follow the print.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "nothing-follows-print",
    severity: Severity::Error,
    page: "\
The spaces of this rule follow the print, but two of its pleats touch: there is no space that could
give way between them.

Put a space between the pleats, or let their depths follow: `print: depths follow`.
",
    failing: one_window! {
        fabric: "width: 54 in, repeat: 4 in across",
        items: "\
pleats touching {
    print: spaces follow
    margin 1 in to 30 in
    repeat 3 times: box 1 in
    margin 1 in to 30 in
}
",
        panel: ["finished width: 40 in", "drop: 14 in", "pleats: touching"],
    },
    mend: one_window! {
        fabric: "width: 54 in, repeat: 6 in across",
        items: "\
pleats touching {
    print: depths follow
    margin 1 in to 30 in
    repeat 3 times: box 1 in
    margin 1 in to 30 in
}
",
        panel: ["finished width: 40 in", "drop: 14 in", "pleats: touching"],
    },
};

/// A pleat touches the one before it, so that no space between them can follow the print.
pub struct NothingFollowsPrint {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// The step that makes the later of the two.
    pub step: Span,
    /// Where the panel names its pleats.
    pub pleats: Span,
}

impl From<NothingFollowsPrint> for Diagnostic {
    fn from(told: NothingFollowsPrint) -> Diagnostic {
        let NothingFollowsPrint {
            panel,
            step,
            pleats,
        } = told;
        CODE.report(format!(
            "nothing follows the print between two pleats of {panel}"
        ))
        .label(step, "no space lies before this pleat")
        .label(pleats, "the spaces of this rule follow the print")
        .help("put a space before it, or write `print: depths follow`")
    }
}
