//! A lining that shrinks more than its face.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// A lining that shrinks more than its face.
pub const CODE: Code = Code {
    slug: "lining-shrinks-more",
    severity: Severity::Warning,
    page: "\
In the first press or wash the lining loses more of its length than the face does.

The lining then pulls the panel up: the face bags over it and the lower edge curls to the back.

Press the lining well before cutting, or choose a lining that shrinks no more than the face.
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

/// The lining of `panel` shrinks by `lining_text` and its face by `face_text`, in percent;
/// that is `more` by so many, which makes it `shorter` by so much over the `drop`.
pub fn lining_shrinks_more(
    panel: &str,
    (lining, lining_text): (Span, &str),
    (face, face_text): (Span, &str),
    (more, drop, shorter): (&str, &str, &str),
) -> Diagnostic {
    CODE.report(format!("the lining of {panel} shrinks more than its face"))
        .label(lining, format!("shrinks by {lining_text} %"))
        .label(face, format!("shrinks by {face_text} %"))
        .sum(format!(
            "{lining_text} % of the lining - {face_text} % of the face = {more} % more"
        ))
        .sum(format!(
            "{more} % of a drop of {drop} = {shorter} shorter than the face"
        ))
        .help(format!(
            "press the lining before cutting, or choose one that shrinks by {face_text} % at most"
        ))
}
