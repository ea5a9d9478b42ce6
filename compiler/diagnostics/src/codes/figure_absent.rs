//! Words that name a figure this panel has not.

use crate::example::one_window;
use crate::{Code, Diagnostic, Fix, Severity, Span};

/// Words that name a figure this panel has not.
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

/// The words of `panel`, standing at `words`, name a `figure` at `span` that it has not; `bare` where
/// nothing before those words says when they are said.
pub fn figure_absent(
    panel: &str,
    words: Span,
    (span, figure): (Span, &str),
    bare: bool,
) -> Diagnostic {
    let report = CODE
        .report(format!("{panel} has no `{figure}`, which a step names"))
        .label(span, "nothing can be put here");
    if bare {
        let when = format!("when {figure} ");
        report
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
        report.help(format!(
            "say it in words of their own, with `when {figure}` before them"
        ))
    }
}
