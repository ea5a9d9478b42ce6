//! A figure of one pleat, join or tape run among words for the whole panel.

use crate::example::one_window;
use crate::{Code, Diagnostic, Fix, PlacedText, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "figure-out-of-place",
    severity: Severity::Error,
    page: "\
Some figures are not of the panel but of one of its pleats, of one of its joins or of one length of
tape. They can stand only among words that are said for each of these in turn.

Said once, the words could mean any of them.

Write `for each pleat`, `for each join` or `for each tape run` before the words.
",
    failing: one_window! {
        make: "seam: 1/2 in, lining: none, steps { fold: \"Lay pleat {pleat}.\" }",
        panel: ["finished width: 40 in", "drop: 14 in"],
    },
    mend: one_window! {
        make: "seam: 1/2 in, lining: none, steps { fold: for each pleat \"Lay pleat {pleat}.\", \"Press them.\" }",
        panel: ["finished width: 40 in", "drop: 14 in"],
    },
};

/// The words of a making step name a figure of one thing among several, and not of which.
pub struct FigureOutOfPlace {
    /// The words with their quotes, before which `for each` can be put.
    pub words: Span,
    /// The name of the figure among them.
    pub figure: PlacedText,
    /// What has such a figure: "pleat".
    pub each: &'static str,
    /// Whether nothing before the words says of which panels they are said.
    pub bare: bool,
}

impl From<FigureOutOfPlace> for Diagnostic {
    fn from(told: FigureOutOfPlace) -> Diagnostic {
        let FigureOutOfPlace {
            words,
            figure,
            each,
            bare,
        } = told;
        let diagnostic = CODE
            .report(format!(
                "`{figure}` is a figure of one {each}, not of a panel"
            ))
            .label(figure.span, "of which one?");
        let for_each = format!("for each {each} ");
        let diagnostic = diagnostic.help(format!(
            "write `{}` before these words, to say them of one after the other",
            for_each.trim_end()
        ));
        if bare {
            let title = format!("write `{}`", for_each.trim_end());
            diagnostic.fix(Fix::insert(title, words, for_each))
        } else {
            diagnostic
        }
    }
}
