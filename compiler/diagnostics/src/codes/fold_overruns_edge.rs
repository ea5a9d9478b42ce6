//! A fold that hangs out past the side edge of its panel.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "fold-overruns-edge",
    severity: Severity::Error,
    page: "\
The cloth folded away behind a pleat reaches past the side edge of the panel. A fold as deep as the
pleat lies under the plain cloth beside it, and there is less plain cloth than that.

The fold looks out at the side, and the panel hangs wider than its finished width: it pushes its
neighbour, or the bracket.

Leave at least the depth of the pleat as plain cloth between the pleat and the edge, or make the
pleat shallower.
",
    failing: one_window! {
        items: "\
pleats one-way {
    rest
    knife 3 in toward left
    margin 2 in
}
",
        panel: ["finished width: 40 in", "drop: 14 in", "pleats: one-way"],
    },
    mend: one_window! {
        items: "\
pleats one-way {
    rest
    knife 3 in toward left
    margin 3 in
}
",
        panel: ["finished width: 40 in", "drop: 14 in", "pleats: one-way"],
    },
};

/// A knife pleat that is deeper than the cloth beside it.
pub struct KnifeDepth {
    /// How deep it is, always the same.
    pub depth: String,
    /// How much cloth lies between it and the edge.
    pub beside: String,
}

/// A fold hangs out past the side edge of its panel.
pub struct FoldOverrunsEdge {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// The step that makes the fold.
    pub step: Span,
    /// Where the panel names its pleats.
    pub pleats: Span,
    /// How far it hangs out.
    pub amount: String,
    /// Why, where it is the fold of a knife pleat of one depth.
    pub knife: Option<KnifeDepth>,
}

impl From<FoldOverrunsEdge> for Diagnostic {
    fn from(told: FoldOverrunsEdge) -> Diagnostic {
        let FoldOverrunsEdge {
            panel,
            step,
            pleats,
            amount,
            knife,
        } = told;
        let diagnostic = CODE
            .report(format!(
                "in {panel}, a fold hangs {amount} out past the side edge"
            ))
            .label(step, format!("this fold reaches {amount} past the edge"))
            .label(pleats, "the pleats of this panel")
            .help(format!(
                "add {amount} of plain cloth between this pleat and the edge"
            ));
        match knife {
            Some(KnifeDepth { depth, beside }) => diagnostic
                .sum(format!(
                    "{depth} deep - {beside} of cloth beside it = {amount} past the edge"
                ))
                .help(format!("or write `knife {beside}`")),
            None => diagnostic,
        }
    }
}
