//! A stack of folded cloth thicker than the making method allows.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span, counted};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "stack-too-thick",
    severity: Severity::Warning,
    page: "\
Where the pleats of a panel lie, its layers are together thicker than the making method says a stack
may be. A layer of the panel is face, interlining and lining together, as many of them as it has,
and the thickness of each is what its fabric says.

A stack too thick to press stands open, and one too thick for the needle or the clips cannot be
made the way the method says.

Pleat with fewer layers over one another, take thinner cloth, or allow more: `stack: at most 6 mm`.
",
    failing: one_window! {
        fabric: "width: 54 in, thickness: 1/16 in",
        make: "seam: 1/2 in, lining: none, stack: at most 1/8 in",
        items: "\
pleats single {
    knife 2 in toward left, fold at 25 in
}
",
        panel: ["finished width: 40 in", "drop: 14 in", "pleats: single"],
    },
    mend: one_window! {
        fabric: "width: 54 in, thickness: 1/32 in",
        make: "seam: 1/2 in, lining: none, stack: at most 1/8 in",
        items: "\
pleats single {
    knife 2 in toward left, fold at 25 in
}
",
        panel: ["finished width: 40 in", "drop: 14 in", "pleats: single"],
    },
};

/// Where pleats lie, a panel is thicker than its making method allows.
pub struct StackTooThick {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// Where the panel names its pleats.
    pub pleats: Span,
    /// Where the limit was written, or else the method was named.
    pub method: Span,
    /// How many layers of the panel lie there.
    pub layers: u32,
    /// How thick one layer of the panel is.
    pub layer: String,
    /// How thick they are together.
    pub thickness: String,
    /// What the method allows.
    pub limit: String,
}

impl From<StackTooThick> for Diagnostic {
    fn from(told: StackTooThick) -> Diagnostic {
        let StackTooThick {
            panel,
            pleats,
            method,
            layers,
            layer,
            thickness,
            limit,
        } = told;
        let layers = counted(layers as usize, "layer");
        CODE.report(format!(
            "the pleats of {panel} lie {thickness} thick, and {limit} is allowed"
        ))
        .label(pleats, format!("{layers} of the panel in one place"))
        .label(method, format!("allows {limit}"))
        .sum(format!(
            "{layers} of the panel x {layer} each = {thickness}"
        ))
        .help(format!(
            "pleat with fewer layers over one another, take thinner cloth, or allow more: `stack: at most \
             {thickness}`"
        ))
    }
}
