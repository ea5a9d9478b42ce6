//! Two properties of a making method that cannot both hold.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// Two properties of a making method that cannot both hold.
pub const CODE: Code = Code {
    slug: "making-contradicts-itself",
    severity: Severity::Error,
    page: "\
Two lines of a making method leave one another nothing to do.

A face that lines itself is folded at the lower edge: there is no edge to hem or to band, and no lining
with edges of its own. A band that takes the place of the face's edge has its own corners, mitred
where two bands meet, so the hems of the face have none.

Leave one of the two lines out. A method that copies another by `like` has all of its lines.
",
    failing: one_window! {
        make: "seam: 1/2 in, lining: self, lower edge: double hem 2 in",
        panel: ["finished width: 40 in", "drop: 14 in"],
    },
    mend: one_window! {
        make: "seam: 1/2 in, lining: self",
        panel: ["finished width: 40 in", "drop: 14 in"],
    },
};

/// The making method `method` has the properties `first` and `second`, each with its place, and for
/// this `reason` they cannot both hold.
pub fn making_contradicts_itself(
    method: &str,
    (first, first_place): (&str, Span),
    (second, second_place): (&str, Span),
    reason: &str,
) -> Diagnostic {
    CODE.report(format!(
        "the making method `{method}` has both `{first}` and `{second}`, which cannot both hold"
    ))
    .label(second_place, format!("`{second}` is left nothing to do"))
    .label(first_place, reason)
    .help(format!("leave out `{second}`, or `{first}`"))
}
