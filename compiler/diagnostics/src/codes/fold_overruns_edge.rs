//! A fold that hangs out past the side edge of its panel.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// A fold that hangs out past the side edge of its panel.
pub const CODE: Code = Code {
    slug: "fold-overruns-edge",
    severity: Severity::Error,
    page: "\
The cloth folded away behind a pleat reaches past the side edge of the panel. A fold as deep as the
pleat lies under the plain cloth beside it, and there is less plain cloth than that.

The fold looks out at the side, and the panel hangs wider than its finished width: it pushes its
neighbour, or the bracket.

Leave at least the depth of the pleat as plain cloth between the pleat and the edge, or make the
pleat shallower.
",
    failing: one_window! {
        items: "\
pleats one-way {
    rest
    knife 3 in toward left
    margin 2 in
}
",
        panel: ["finished width: 40 in", "drop: 14 in", "pleats: one-way"],
    },
    mend: one_window! {
        items: "\
pleats one-way {
    rest
    knife 3 in toward left
    margin 3 in
}
",
        panel: ["finished width: 40 in", "drop: 14 in", "pleats: one-way"],
    },
};

/// The fold of `step` reaches `amount` past the side edge of `panel`; a knife pleat of one depth also
/// gives that `depth` and the cloth `beside` it, which is less.
pub fn fold_overruns_edge(
    panel: &str,
    (step, pleats): (Span, Span),
    amount: &str,
    knife: Option<(&str, &str)>,
) -> Diagnostic {
    let report = CODE
        .report(format!(
            "in {panel}, a fold hangs {amount} out past the side edge"
        ))
        .label(step, format!("this fold reaches {amount} past the edge"))
        .label(pleats, "the pleats of this panel")
        .help(format!(
            "add {amount} of plain cloth between this pleat and the edge"
        ));
    match knife {
        Some((depth, beside)) => report
            .sum(format!(
                "{depth} deep - {beside} of cloth beside it = {amount} past the edge"
            ))
            .help(format!("or write `knife {beside}`")),
        None => report,
    }
}
