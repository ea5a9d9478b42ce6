//! A motif that a pleat hides.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "motif-hidden",
    severity: Severity::Warning,
    page: "\
The motif is to be centred on the panel, and the middle of the panel lies inside a pleat.

The cloth is laid out by the motif, often at the cost of more cloth, and then nobody sees it.

Move the pleat away from the middle, or place the motif on another panel.
",
    failing: one_window! {
        fabric: "width: 54 in, repeat: 12 in along",
        items: "\
pleats single {
    knife 2 in toward left, fold at 25 in
}
",
        panel: ["flat width: 44 in", "drop: 14 in", "pleats: single"],
        window: "rod: pole, motif: centred on front, 8 in below heading",
    },
    mend: one_window! {
        fabric: "width: 54 in, repeat: 12 in along",
        items: "\
pleats single {
    knife 2 in toward left, fold at 35 in
}
",
        panel: ["flat width: 44 in", "drop: 14 in", "pleats: single"],
        window: "rod: pole, motif: centred on front, 8 in below heading",
    },
};

/// A pleat hides the middle of a panel, where a motif is to lie.
pub struct MotifHidden {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// Where the motif was asked for.
    pub motif: Span,
    /// Where the panel names its pleats.
    pub pleats: Span,
    /// How far the middle lies from the left edge, flat.
    pub at: String,
    /// Where the hidden cloth begins, from the left edge.
    pub from: String,
    /// Where it ends, measured alike.
    pub to: String,
}

impl From<MotifHidden> for Diagnostic {
    fn from(told: MotifHidden) -> Diagnostic {
        let MotifHidden {
            panel,
            motif,
            pleats,
            at,
            from,
            to,
        } = told;
        CODE.report(format!("a pleat hides the motif on {panel}"))
            .label(
                motif,
                format!("its centre lies {at} from the left edge, flat"),
            )
            .label(pleats, "a pleat of these covers that place")
            .sum(format!(
                "the flat cloth from {from} to {to} is hidden, and the middle lies at {at}"
            ))
            .help("move the pleat away from the middle, or place the motif on another panel")
    }
}
