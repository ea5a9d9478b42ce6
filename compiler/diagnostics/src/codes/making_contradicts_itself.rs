//! Two properties of a making method that cannot both hold.

use crate::example::one_window;
use crate::{Code, Diagnostic, PlacedText, Severity};

/// Its page for `pelmet explain`, with an example and the mend.
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

/// Two properties of a making method cannot both hold.
pub struct MakingContradictsItself<'a> {
    /// What the making method is called.
    pub method: &'a str,
    /// The property that leaves the other nothing to do.
    pub first: PlacedText,
    /// The other property.
    pub second: PlacedText,
    /// Why it leaves it nothing: "there is no lining to band".
    pub reason: &'a str,
}

impl From<MakingContradictsItself<'_>> for Diagnostic {
    fn from(told: MakingContradictsItself<'_>) -> Diagnostic {
        let MakingContradictsItself {
            method,
            first,
            second,
            reason,
        } = told;
        CODE.report(format!(
            "the making method `{method}` has both `{first}` and `{second}`, which cannot both hold"
        ))
        .label(second.span, format!("`{second}` is left nothing to do"))
        .label(first.span, reason)
        .help(format!("leave out `{second}`, or `{first}`"))
    }
}
