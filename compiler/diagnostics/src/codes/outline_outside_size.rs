//! A point of an outline outside the width or drop of its panel.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "outline-outside-size",
    severity: Severity::Error,
    page: "\
A point of the outline lies outside the panel: below its drop, above its heading line, beyond its
side edge or across its fold.

The drop and the width are what the window was measured for. A panel that goes beyond them is longer
or wider than it says, and its cloth is cut too small.

Move the point inside, or order the panel larger.
",
    failing: one_window! {
        items: "\
outline pointed whole {
    from (0, drop)
    to (width / 2, drop + 1 in)
    to (width, drop)
    up to heading
}
",
        panel: ["finished width: 40 in", "drop: 14 in", "outline: pointed"],
    },
    mend: one_window! {
        items: "\
outline pointed whole {
    from (0, drop - 1 in)
    to (width / 2, drop)
    to (width, drop - 1 in)
    up to heading
}
",
        panel: ["finished width: 40 in", "drop: 14 in", "outline: pointed"],
    },
};

/// An outline leaves the size of its panel.
pub struct OutlineOutsideSize {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// The step that leaves it, at its end or on its way.
    pub step: Span,
    /// Where the panel names its outline.
    pub outline: Span,
    /// How far it goes beyond.
    pub amount: String,
    /// Beyond what: "past the edge".
    pub side: &'static str,
    /// How far it reaches in that direction.
    pub reaches: String,
    /// How far it may.
    pub limit: String,
    /// Where the size that sets the limit was written, where one does.
    pub size: Option<Span>,
}

impl From<OutlineOutsideSize> for Diagnostic {
    fn from(told: OutlineOutsideSize) -> Diagnostic {
        let OutlineOutsideSize {
            panel,
            step,
            outline,
            amount,
            side,
            reaches,
            limit,
            size,
        } = told;
        let diagnostic = CODE
            .report(format!("the outline of {panel} goes {amount} {side}"))
            .label(step, format!("{amount} {side}"));
        let diagnostic = match size {
            Some(size) => diagnostic
                .label(size, format!("the outline has {limit} there"))
                .sum(format!(
                    "{reaches} of outline - {limit} of panel = {amount} {side}"
                )),
            None => diagnostic.sum(format!(
                "the panel begins at {limit} there, and this point lies at {reaches}"
            )),
        };
        diagnostic
            .label(outline, "the outline of this panel")
            .help(format!("move this point back by {amount}"))
    }
}
