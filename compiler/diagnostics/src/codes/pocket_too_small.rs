//! A rod pocket too small for its rod.

use crate::example::one_window;
use crate::{Code, Diagnostic, Fix, PlacedText, Severity};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "pocket-too-small",
    severity: Severity::Error,
    page: "\
A rod pocket is sewn flat: two layers as deep as the pocket. Opened, they must reach round the rod,
so the pocket must be at least half as deep as the rod is round, which is 1.57 times its diameter.

A smaller pocket does not go over the rod at all, and one that only just does tears at its seams or
will not slide.

Make the pocket deeper, or leave its depth out: it then follows from the rod and the ease.
",
    failing: one_window! {
        panel: ["finished width: 40 in", "drop: 14 in"],
        head: "rod pocket, pocket 1 in",
    },
    mend: one_window! {
        panel: ["finished width: 40 in", "drop: 14 in"],
        head: "rod pocket, pocket 2 in",
    },
};

/// A rod does not go into the pocket that is made for it.
pub struct PocketTooSmall {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// How deep the pocket is, laid flat.
    pub pocket: PlacedText,
    /// How thick the rod is.
    pub diameter: PlacedText,
    /// The least depth that goes round it.
    pub least: String,
    /// That depth as it is typed in, where one was written.
    pub to_write: Option<String>,
}

impl From<PocketTooSmall> for Diagnostic {
    fn from(told: PocketTooSmall) -> Diagnostic {
        let PocketTooSmall {
            panel,
            pocket,
            diameter,
            least,
            to_write,
        } = told;
        let diagnostic = CODE
            .report(format!(
                "the pocket of {panel} is {pocket} deep, and its rod needs {least}"
            ))
            .label(pocket.span, format!("{pocket} deep"))
            .label(diameter.span, format!("{diameter} thick"))
            .sum(format!(
                "{diameter} thick x 3.1416 = the way round the rod; half of it = {least} at the least"
            ));
        match to_write {
            Some(to_write) => diagnostic
                .help(format!("write `pocket {to_write}` or more"))
                .fix(Fix::replace(
                    format!("make the pocket {to_write} deep"),
                    pocket.span,
                    to_write,
                )),
            None => diagnostic.help("make the pocket deeper, or leave its depth out"),
        }
    }
}
