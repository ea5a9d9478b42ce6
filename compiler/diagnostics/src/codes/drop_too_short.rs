//! A drop of less than its heading takes.

use crate::example::one_window;
use crate::{Code, Diagnostic, Fix, PlacedText, Severity};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "drop-too-short",
    severity: Severity::Error,
    page: "\
The drop is measured from the heading line down, and part of it is taken by the heading itself: half
the rod for a panel laid over one, the frill and the pocket for a panel with a rod pocket. Here the
drop is less than that.

The panel would end on the curve of the rod, or inside its own pocket.

Make the drop longer; it is measured from the top of the rod and not from below it.
",
    failing: one_window! {
        rod: "length: 40 in, diameter: 6 in",
        panel: ["finished width: 40 in", "drop: 2 in"],
        head: "over rod, tail 1 in",
    },
    mend: one_window! {
        rod: "length: 40 in, diameter: 6 in",
        panel: ["finished width: 40 in", "drop: 14 in"],
        head: "over rod, tail 1 in",
    },
};

/// The drop of a panel is less than its heading takes of it.
pub struct DropTooShort {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// How long the panel is ordered, from the heading line down.
    pub drop: PlacedText,
    /// What takes it: "half of the rod".
    pub taker: PlacedText,
    /// How much of the drop that takes, so that no drop can be less.
    pub least: String,
    /// How that comes about.
    pub sum: String,
    /// How much the drop is less.
    pub missing: String,
    /// The least drop as it is typed in, where one was written.
    pub to_write: Option<String>,
}

impl From<DropTooShort> for Diagnostic {
    fn from(told: DropTooShort) -> Diagnostic {
        let DropTooShort {
            panel,
            drop,
            taker,
            least,
            sum,
            missing,
            to_write,
        } = told;
        let diagnostic = CODE
            .report(format!(
                "the drop of {panel} is {drop}, and its heading takes {least} of it"
            ))
            .label(drop.span, format!("{drop} from the heading line down"))
            .label(taker.span, format!("{taker} takes {least}"))
            .sum(sum)
            .sum(format!(
                "{least} taken - {drop} of drop = {missing} missing"
            ));
        match to_write {
            Some(to_write) => diagnostic
                .help(format!("write `drop: {to_write}` or more"))
                .fix(Fix::replace(
                    format!("make the drop {to_write}"),
                    drop.span,
                    to_write,
                )),
            None => diagnostic.help(format!("make the drop {least} or more")),
        }
    }
}
