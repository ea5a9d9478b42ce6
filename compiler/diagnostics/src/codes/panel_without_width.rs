//! A panel of which no width is known.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// A panel of which no width is known.
pub const CODE: Code = Code {
    slug: "panel-without-width",
    severity: Severity::Error,
    page: "\
Nothing says how wide the panel is: it has no finished, flat or cut width and does not fill the row.

Every piece is cut by its width, and the row cannot be added up without it.

Give it one width; the pleats or the fullness give the others.
",
    failing: one_window! {
        panel: ["drop: 14 in"],
    },
    mend: one_window! {
        panel: ["finished width: 40 in", "drop: 14 in"],
    },
};

/// No width of `panel` is known; `example` is a length to write.
pub fn panel_without_width(panel: &str, name: Span, example: &str) -> Diagnostic {
    CODE.report(format!("{panel} has no width"))
        .label(name, "a width is missing here")
        .help(format!(
            "add a line such as `finished width: {example}` or `finished width: fill`"
        ))
}
