//! More layers over one another than a pleat rule intends.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span, counted};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "fold-on-fold",
    severity: Severity::Warning,
    page: "\
Somewhere across the finished width more layers of the panel lie over one another than the pleat
rule says are meant. A plain pleat makes three: the cloth that is seen, the fold turned back beneath
it, and the cloth that goes on. Beyond that, one pleat lies on another.

Each layer is face and lining together. The stack stands up, does not press flat, and pulls the
heading out of line.

Leave at least the depth of a pleat as plain cloth between it and the next. If the stack is meant,
say so in the rule: `layers: at most 5`.
",
    failing: one_window! {
        items: "\
pleats close {
    margin 6 in
    knife 2 in toward left
    space 1 in
    knife 2 in toward left
    rest
}
",
        panel: ["finished width: 40 in", "drop: 14 in", "pleats: close"],
    },
    mend: one_window! {
        items: "\
pleats close {
    margin 6 in
    knife 2 in toward left
    space 2 in
    knife 2 in toward left
    rest
}
",
        panel: ["finished width: 40 in", "drop: 14 in", "pleats: close"],
    },
};

/// More layers lie over one another than the pleat rule means to.
pub struct FoldOnFold {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// Where the panel names its pleats.
    pub pleats: Span,
    /// The pleat whose fold lies deepest.
    pub step: Span,
    /// How many layers lie over one another.
    pub layers: u32,
    /// How many are meant.
    pub intended: u32,
    /// Where that begins across the finished width, from the left.
    pub from: String,
    /// Where it ends, measured alike.
    pub to: String,
}

impl From<FoldOnFold> for Diagnostic {
    fn from(told: FoldOnFold) -> Diagnostic {
        let FoldOnFold {
            panel,
            pleats,
            step,
            layers,
            intended,
            from,
            to,
        } = told;
        CODE.report(format!(
            "in {panel}, {layers} layers lie over one another, and {intended} are meant"
        ))
        .label(pleats, format!("{layers} layers in one place"))
        .label(step, "the fold of this pleat lies deepest")
        .sum(format!(
            "from {from} to {to} across the finished width: {layers} layers"
        ))
        .help(format!(
            "leave more plain cloth between the pleats, or say in the rule that {} are meant: `layers: at \
             most {layers}`",
            counted(layers as usize, "layer")
        ))
    }
}
