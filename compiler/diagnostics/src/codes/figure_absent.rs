//! Words that name a figure this panel has not.

use crate::example::one_window;
use crate::{Code, Diagnostic, Fix, PlacedText, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "figure-absent",
    severity: Severity::Error,
    page: "\
The words of a making step name a figure that other panels may have and this one has not: the size of
its lining, where it has none; the length of its turning opening, where nothing is turned.

The step would come out with a hole in it, just where the maker looks for a number.

Say those words only of panels that have the figure, with `when` before them, or make the panel so that
it has it.
",
    failing: one_window! {
        make: "seam: 1/2 in, lining: none, steps { cut: \"Cut the lining {lining size}.\" }",
        panel: ["finished width: 40 in", "drop: 14 in"],
    },
    mend: one_window! {
        make: "seam: 1/2 in, lining: none, steps { cut: \"Cut the face {face size}.\", when lining size \"Cut the lining {lining size}.\" }",
        panel: ["finished width: 40 in", "drop: 14 in"],
    },
};

/// The words of a making step name a figure that the panel does not have.
pub struct FigureAbsent {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// The words with their quotes, before which a condition can be put.
    pub words: Span,
    /// The name of the figure among them.
    pub figure: PlacedText,
    /// Whether nothing before the words says of which panels they are said.
    pub bare: bool,
}

impl From<FigureAbsent> for Diagnostic {
    fn from(told: FigureAbsent) -> Diagnostic {
        let FigureAbsent {
            panel,
            words,
            figure,
            bare,
        } = told;
        let diagnostic = CODE
            .report(format!("{panel} has no `{figure}`, which a step names"))
            .label(figure.span, "nothing can be put here");
        if bare {
            let when = format!("when {figure} ");
            diagnostic
                .help(format!(
                    "write `{}` before these words, to say them only of panels that have it",
                    when.trim_end()
                ))
                .fix(Fix::insert(
                    format!("write `{}`", when.trim_end()),
                    words,
                    when,
                ))
        } else {
            diagnostic.help(format!(
                "say it in words of their own, with `when {figure}` before them"
            ))
        }
    }
}
