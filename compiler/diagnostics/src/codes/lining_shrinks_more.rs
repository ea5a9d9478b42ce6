//! A lining or interlining that shrinks more than its face.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// A lining or interlining that shrinks more than its face.
pub const CODE: Code = Code {
    slug: "lining-shrinks-more",
    severity: Severity::Warning,
    page: "\
In the first press or wash the lining or the interlining loses more of its length than the face does.

It then pulls the panel up: the face bags over it and the lower edge curls to the back.

Press it well before cutting, or choose a cloth that shrinks no more than the face.
",
    failing: one_window! {
        fabric: "width: 54 in, shrinkage: 2 %",
        make: "seam: 1/2 in, lining: as face",
        items: "fabric sateen { width: 54 in, shrinkage: 5 % }\n",
        panel: ["finished width: 40 in", "drop: 14 in", "lining: sateen"],
    },
    mend: one_window! {
        fabric: "width: 54 in, shrinkage: 2 %",
        make: "seam: 1/2 in, lining: as face",
        items: "fabric sateen { width: 54 in, shrinkage: 2 % }\n",
        panel: ["finished width: 40 in", "drop: 14 in", "lining: sateen"],
    },
};

/// The `layer` of `panel`, a lining or interlining, shrinks by `behind_text` and its face by
/// `face_text`, in percent; that is `more` by so many, which makes it `shorter` by so much over the
/// `drop`.
pub fn lining_shrinks_more(
    panel: &str,
    layer: &str,
    (behind, behind_text): (Span, &str),
    (face, face_text): (Span, &str),
    (more, drop, shorter): (&str, &str, &str),
) -> Diagnostic {
    CODE.report(format!("the {layer} of {panel} shrinks more than its face"))
        .label(behind, format!("shrinks by {behind_text} %"))
        .label(face, format!("shrinks by {face_text} %"))
        .sum(format!(
            "{behind_text} % of the {layer} - {face_text} % of the face = {more} % more"
        ))
        .sum(format!(
            "{more} % of a drop of {drop} = {shorter} shorter than the face"
        ))
        .help(format!(
            "press the {layer} before cutting, or choose one that shrinks by {face_text} % at most"
        ))
}
