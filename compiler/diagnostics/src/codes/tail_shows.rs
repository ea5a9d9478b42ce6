//! A tail as long as its panel.

use crate::example::one_window;
use crate::{Code, Diagnostic, PlacedText, Severity};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "tail-shows",
    severity: Severity::Warning,
    page: "\
The tail runs down the back of the panel from the middle of the rod, and is as long as the panel in
front of it or longer.

Its end looks out below the lower edge.

Make the tail shorter than the drop.
",
    failing: one_window! {
        panel: ["finished width: 40 in", "drop: 14 in"],
        head: "over rod, tail 15 in",
    },
    mend: one_window! {
        panel: ["finished width: 40 in", "drop: 14 in"],
        head: "over rod, tail 4 in",
    },
};

/// The tail of a panel hangs down behind as far as its drop in front, or farther.
pub struct TailShows {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// How far the tail hangs down behind from where it begins.
    pub tail: PlacedText,
    /// How far the panel hangs down in front.
    pub drop: PlacedText,
    /// How far the tail begins below the heading line: half the rod.
    pub half: String,
    /// How far down it reaches.
    pub reached: String,
}

impl From<TailShows> for Diagnostic {
    fn from(told: TailShows) -> Diagnostic {
        let TailShows {
            panel,
            tail,
            drop,
            half,
            reached,
        } = told;
        CODE.report(format!("the tail of {panel} shows below its lower edge"))
            .label(tail.span, format!("{tail} down the back"))
            .label(drop.span, format!("{drop} down the front"))
            .sum(format!(
                "{half} for half the rod + {tail} of tail = {reached} down the back"
            ))
            .help("write a shorter tail, or a longer drop")
    }
}
