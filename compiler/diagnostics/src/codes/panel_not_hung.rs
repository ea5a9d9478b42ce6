//! A panel that hangs nowhere.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// A panel that hangs nowhere.
pub const CODE: Code = Code {
    slug: "panel-not-hung",
    severity: Severity::Warning,
    page: "\
A panel of the treatment is neither in the row nor over its joins. It is not made, and no cloth is
bought for it.

Often a name in the row is another than the one that was meant.

Name the panel in the row or over the joins, or take it out.
",
    failing: one_window! {
        panel: ["finished width: 40 in", "drop: 14 in"],
        others: "panel back like front { drop: 20 in }",
    },
    mend: one_window! {
        panel: ["finished width: 20 in", "drop: 14 in"],
        others: "panel back like front { drop: 20 in }",
        row: "front, back",
    },
};

/// The `panel` called `name` is neither in the row nor over its joins.
pub fn panel_not_hung(panel: &str, name: &str, (place, row): (Span, Span)) -> Diagnostic {
    CODE.report(format!("{panel} hangs nowhere"))
        .label(place, "this panel is not made")
        .label(row, "it is not named here")
        .help(format!(
            "name `{name}` in the row or over the joins, or take the panel out"
        ))
}
