//! A piece longer than its cloth is to be had.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "longer-than-bolt",
    severity: Severity::Error,
    page: "\
A piece of the panel is cut longer than the longest length of its cloth that is to be had.

It would need a seam across it, in plain sight.

Shorten the panel, or choose a cloth that comes in longer lengths.
",
    failing: one_window! {
        fabric: "width: 54 in, bolt: 18 in",
        panel: ["finished width: 40 in", "drop: 14 in"],
    },
    mend: one_window! {
        fabric: "width: 54 in, bolt: 20 yd",
        panel: ["finished width: 40 in", "drop: 14 in"],
    },
};

/// A piece is cut longer than its cloth comes.
pub struct LongerThanBolt {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// Which layer it is: "face", "lining".
    pub layer: &'static str,
    /// Where the drop of the panel was written.
    pub drop: Span,
    /// Where the panel names the cloth.
    pub cloth: Span,
    /// Where the cloth was described, if that is known.
    pub fabric: Option<Span>,
    /// How long the piece is cut.
    pub cut_length: String,
    /// The longest piece that the cloth comes in.
    pub bolt: String,
    /// How much the bolt is shorter.
    pub amount: String,
}

impl From<LongerThanBolt> for Diagnostic {
    fn from(told: LongerThanBolt) -> Diagnostic {
        let LongerThanBolt {
            panel,
            layer,
            drop,
            cloth,
            fabric,
            cut_length,
            bolt,
            amount,
        } = told;
        CODE.report(format!(
            "the {layer} of {panel} is cut {cut_length} long, and its cloth comes in {bolt}"
        ))
        .label(drop, format!("cut {cut_length} long"))
        .label(cloth, format!("the cloth of the {layer}"))
        .label_if_known(fabric, format!("{bolt} at the longest"))
        .sum(format!(
            "{cut_length} to cut - {bolt} of bolt = {amount} missing"
        ))
        .help(format!(
            "make the panel {amount} shorter, or choose a cloth in longer lengths"
        ))
    }
}
