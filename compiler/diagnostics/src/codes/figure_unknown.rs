//! Words that name a figure no panel has.

use crate::example::one_window;
use crate::{Code, Diagnostic, Fix, Severity, Span, did_you_mean};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "figure-unknown",
    severity: Severity::Error,
    page: "\
The words of a making step name a figure between curly brackets, and nothing that is known of a panel
is called so. Most often a letter is missing.

A step without its number sends the maker back to the drawing, and a number that is wrong is cut into
the cloth, so no other figure is put in its place.

Write the name of a figure; the reference lists them all.
",
    failing: one_window! {
        make: "seam: 1/2 in, lining: none, steps { cut: \"Cut the face {fase size}.\" }",
        panel: ["finished width: 40 in", "drop: 14 in"],
    },
    mend: one_window! {
        make: "seam: 1/2 in, lining: none, steps { cut: \"Cut the face {face size}.\" }",
        panel: ["finished width: 40 in", "drop: 14 in"],
    },
};

/// The words at `span` name a `figure`; those there are, are `known`.
pub fn figure_unknown(span: Span, figure: &str, known: &[&str]) -> Diagnostic {
    let diagnostic = CODE
        .report(format!("no figure of a panel is called `{figure}`"))
        .label(span, "not known of any panel");
    match did_you_mean(figure, known.iter().copied()) {
        Some(nearest) => diagnostic
            .help(format!("did you mean `{nearest}`?"))
            .fix(Fix::replace(format!("write `{nearest}`"), span, nearest)),
        None => diagnostic.help(
            "figures are such as `face size`, `flat width` or `made length`; the reference has them all",
        ),
    }
}
