//! Two widths of a panel that cannot both be right.

use crate::example::one_window;
use crate::{Code, Diagnostic, PlacedText, Severity};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "widths-disagree",
    severity: Severity::Error,
    page: "\
Two widths are given for the panel, and worked out from each other they differ. The cut width is the
flat width with the allowances at both sides; the flat width is the finished width times the
fullness.

One of the two is wrong, and which one decides how the cloth is cut.

Leave out the one that follows from the other, or correct it.
",
    failing: one_window! {
        panel: ["finished width: 40 in", "cut width: 42 in", "drop: 14 in"],
    },
    mend: one_window! {
        panel: ["finished width: 40 in", "cut width: 41 in", "drop: 14 in"],
    },
};

/// Two widths of a panel, worked out in two ways, disagree.
pub struct WidthsDisagree<'a> {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// What the one is called: "flat width".
    pub first_name: &'a str,
    /// The one, where what gives it is written.
    pub first: PlacedText,
    /// What the other, which is told first, is called.
    pub second_name: &'a str,
    /// The other, where what gives it is written.
    pub second: PlacedText,
    /// How far they are apart.
    pub difference: String,
}

impl From<WidthsDisagree<'_>> for Diagnostic {
    fn from(told: WidthsDisagree<'_>) -> Diagnostic {
        let WidthsDisagree {
            panel,
            first_name,
            first,
            second_name,
            second,
            difference,
        } = told;
        let diagnostic = CODE
            .report(format!("the widths of {panel} disagree by {difference}"))
            .label(second.span, format!("a {second_name} of {second}"));
        let diagnostic = if first.span == second.span {
            diagnostic
        } else {
            diagnostic.label(first.span, format!("a {first_name} of {first}"))
        };
        diagnostic
            .sum(format!(
                "{first_name} {first}, {second_name} {second}: {difference} apart"
            ))
            .help("leave one of the two out, or correct the one that is wrong")
    }
}
