//! A curly bracket without its other among the words of a step.

use crate::example::one_window;
use crate::{Code, Diagnostic, Fix, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "brace-unmatched",
    severity: Severity::Error,
    page: "\
Between curly brackets the words of a step name a figure of the panel. One of the two is missing, so it
cannot be told where the name ends and the words go on.

A figure that is not found would be read out as words.

Write a bracket before and after the name of the figure, or take the one there is out.
",
    failing: one_window! {
        make: "seam: 1/2 in, lining: none, steps { cut: \"Cut the face {face size.\" }",
        panel: ["finished width: 40 in", "drop: 14 in"],
    },
    mend: one_window! {
        make: "seam: 1/2 in, lining: none, steps { cut: \"Cut the face {face size}.\" }",
        panel: ["finished width: 40 in", "drop: 14 in"],
    },
};

/// The bracket at `span` opens a figure that never ends, or else ends one that never began.
pub fn brace_unmatched(span: Span, opens: bool) -> Diagnostic {
    let (here, other) = if opens {
        (
            "opened here and not closed",
            "`}` after the name of the figure",
        )
    } else {
        (
            "closed here and not opened",
            "`{` before the name of the figure",
        )
    };
    CODE.report("a curly bracket stands alone among the words of a step")
        .label(span, here)
        .help(format!("write {other}, as in `{{face size}}`"))
        .fix(Fix::remove("take it out", span))
}
