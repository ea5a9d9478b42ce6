//! A rod that sags more than it may between its brackets.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "rod-sags",
    severity: Severity::Warning,
    page: "\
What hangs from the rod, and the rod itself, bend it between its brackets by more than the rod's `sag
limit`, or by more than 1/8 in where it states none.

A sagging rod is seen from the room: the heading dips between the brackets and the lower edge with it.
Panels slide toward the dip, and joins open.

Use more brackets, or a rod that is thicker, stiffer or lighter. The sum is an estimate: it spreads
the weight evenly, sets the brackets at the ends and at equal distances, and takes the softest of its
material. What rod, brackets and anchors may carry is for their makers to say, and for the wall.
",
    failing: one_window! {
        fabric: "width: 54 in, weight: 300 g/m2",
        rod: "length: 90 in, diameter: 1/2 in, material: wood, brackets: 2",
        panel: ["finished width: fill", "drop: 14 in"],
        window: "rod: pole",
    },
    mend: one_window! {
        fabric: "width: 54 in, weight: 300 g/m2",
        rod: "length: 90 in, diameter: 1 1/2 in, material: wood, brackets: 3",
        panel: ["finished width: fill", "drop: 14 in"],
        window: "rod: pole",
    },
};

/// A rod sags more between its brackets than it may: an estimate.
pub struct RodSags {
    /// The window, as a sentence names it: "the window `north`".
    pub window: String,
    /// Where the window names its rod.
    pub support: Span,
    /// How far it sags between two brackets, rounded up.
    pub sag: String,
    /// How far it may.
    pub limit: String,
    /// How far its brackets stand apart.
    pub apart: String,
    /// How far they may.
    pub spacing: String,
    /// How many brackets stand no farther apart, where a number of them does.
    pub brackets: Option<u32>,
}

impl From<RodSags> for Diagnostic {
    fn from(told: RodSags) -> Diagnostic {
        let RodSags {
            window,
            support,
            sag,
            limit,
            apart,
            spacing,
            brackets,
        } = told;
        let diagnostic = CODE
            .report(format!(
                "the rod of {window} sags by about {sag} between its brackets, and may by {limit}"
            ))
            .label(support, format!("brackets {apart} apart"))
            .sum(format!(
                "within {limit} up to about {spacing} between brackets"
            ));
        let diagnostic = match brackets {
            Some(brackets) => diagnostic.help(format!("write `brackets: {brackets}` for this rod")),
            None => diagnostic,
        };
        diagnostic.help("or take a rod that is thicker or stiffer")
    }
}
