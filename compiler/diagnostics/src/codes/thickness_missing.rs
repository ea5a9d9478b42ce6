//! A limit on a stack of cloth that does not say how thick it is.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// A limit on a stack of cloth that does not say how thick it is.
pub const CODE: Code = Code {
    slug: "thickness-missing",
    severity: Severity::Warning,
    page: "\
The making method says how thick a stack of folded cloth may be, and a cloth of the panel does not
say how thick it is; so nobody can tell whether the pleats keep to the limit.

Press a few layers of the cloth, measure them together, and write the thickness of one:
`thickness: 0.4 mm`.
",
    failing: one_window! {
        make: "seam: 1/2 in, lining: none, stack: at most 1/8 in",
        items: "\
pleats single {
    knife 2 in toward left, fold at 25 in
}
",
        panel: ["finished width: 40 in", "drop: 14 in", "pleats: single"],
    },
    mend: one_window! {
        fabric: "width: 54 in, thickness: 1/32 in",
        make: "seam: 1/2 in, lining: none, stack: at most 1/8 in",
        items: "\
pleats single {
    knife 2 in toward left, fold at 25 in
}
",
        panel: ["finished width: 40 in", "drop: 14 in", "pleats: single"],
    },
};

/// The stack of `panel` cannot be held to `limit`, since its cloth for the `layer` has no thickness.
pub fn thickness_missing(
    panel: &str,
    layer: &str,
    (cloth, method): (Span, Span),
    limit: &str,
) -> Diagnostic {
    CODE.report(format!(
        "the pleats of {panel} cannot be held to {limit}: its {layer} does not say how thick it is"
    ))
    .label(cloth, "this cloth has no thickness")
    .label(method, format!("allows {limit}"))
    .help("write the thickness of one layer in the fabric: `thickness: 0.4 mm`")
}
