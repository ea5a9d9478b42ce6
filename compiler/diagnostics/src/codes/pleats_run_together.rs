//! Two pleats that need the same flat cloth.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "pleats-run-together",
    severity: Severity::Error,
    page: "\
A pleat uses a stretch of the flat cloth: twice its depth for a knife pleat, four times its depth
and its face for a box. The stretches of two pleats lie partly on the same cloth.

Cloth can be folded into one pleat only. On the table the second pleat would come out shallower than
planned, and everything after it would move.

TextPlace the second pleat farther on, or make one of the two shallower.
",
    failing: one_window! {
        items: "\
pleats pair {
    knife 2 in toward left, fold at 10 in
    knife 2 in toward left, fold 3 in on
}
",
        panel: ["flat width: 48 in", "drop: 14 in", "pleats: pair"],
    },
    mend: one_window! {
        items: "\
pleats pair {
    knife 2 in toward left, fold at 10 in
    knife 2 in toward left, fold 6 in on
}
",
        panel: ["flat width: 48 in", "drop: 14 in", "pleats: pair"],
    },
};

/// Two pleats need the same flat cloth.
pub struct PleatsRunTogether {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// The step that makes the one.
    pub first: Span,
    /// The step that makes the other, which is told first; perhaps the same.
    pub second: Span,
    /// Where the panel names its pleats.
    pub pleats: Span,
    /// How much cloth both need.
    pub amount: String,
    /// Where the rule begins: "left edge" or "centre".
    pub start: &'static str,
    /// How far from there the one ends, flat.
    pub ends: String,
    /// How far from there the other begins, flat.
    pub begins: String,
    /// How to write the place of the other so that it does not, where it has a place of its own:
    /// "fold at 9 in".
    pub further: Option<String>,
}

impl From<PleatsRunTogether> for Diagnostic {
    fn from(told: PleatsRunTogether) -> Diagnostic {
        let PleatsRunTogether {
            panel,
            first,
            second,
            pleats,
            amount,
            start,
            ends,
            begins,
            further,
        } = told;
        let help = match further {
            Some(further) => format!("write `{further}` or more, or make one of the two shallower"),
            None => {
                format!(
                    "add {amount} of plain cloth between the two, or make one of them shallower"
                )
            }
        };
        let diagnostic = CODE
            .report(format!(
                "the pleats of {panel} need the same {amount} of flat cloth twice"
            ))
            .label(second, format!("begins {amount} before its neighbour ends"));
        let diagnostic = if first == second {
            diagnostic
        } else {
            diagnostic.label(first, "its neighbour")
        };
        diagnostic
            .label(pleats, "the pleats of this panel")
            .sum(format!(
                "from the {start}: {ends} to the end of one - {begins} to the beginning of the next = \
                 {amount} needed twice"
            ))
            .help(help)
    }
}
