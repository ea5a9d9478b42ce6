//! The side edge of a panel, hidden inside a fold.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "edge-inside-fold",
    severity: Severity::Error,
    page: "\
A fold beside the side edge is brought over the edge and covers it: the pleat takes up more cloth
than lies between its fold and the edge.

What is seen at the side is then the fold and not the finished edge, and the panel hangs wider than
its finished width.

TextPlace the fold farther in, by at least the amount in the report, or make the pleat shallower.
",
    failing: one_window! {
        items: "\
pleats one-way {
    knife 2 in toward left, fold at 3 in
}
",
        panel: ["flat width: 44 in", "drop: 14 in", "pleats: one-way"],
    },
    mend: one_window! {
        items: "\
pleats one-way {
    knife 2 in toward left, fold at 6 in
}
",
        panel: ["flat width: 44 in", "drop: 14 in", "pleats: one-way"],
    },
};

/// A fold covers the side edge of its panel.
pub struct EdgeInsideFold {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// The step that makes the fold.
    pub step: Span,
    /// Where the panel names its pleats.
    pub pleats: Span,
    /// How far the fold lies from the edge, flat.
    pub fold_at: String,
    /// How much is taken up on the way from the edge to the fold, its own pleat included.
    pub taken_up: String,
    /// How far the edge lies inside the fold.
    pub amount: String,
}

impl From<EdgeInsideFold> for Diagnostic {
    fn from(told: EdgeInsideFold) -> Diagnostic {
        let EdgeInsideFold {
            panel,
            step,
            pleats,
            fold_at,
            taken_up,
            amount,
        } = told;
        CODE.report(format!(
            "in {panel}, the side edge lies {amount} inside a fold"
        ))
        .label(step, format!("this fold covers the edge by {amount}"))
        .label(pleats, "the pleats of this panel")
        .sum(format!(
            "{taken_up} taken up on the way - {fold_at} from the edge to the fold = {amount} over the edge"
        ))
        .help(format!(
            "place this fold {amount} or more farther from the edge, or make the pleat shallower"
        ))
    }
}
