//! A limit on a stack of cloth that does not say how thick it is.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
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

/// A making method limits the thickness of a stack, and a cloth in it does not say how thick it is.
pub struct ThicknessMissing {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// Which layer it is: "face", "lining".
    pub layer: &'static str,
    /// Where the panel names the cloth.
    pub cloth: Span,
    /// Where the limit was written, or else the method was named.
    pub method: Span,
    /// What the method allows.
    pub limit: String,
}

impl From<ThicknessMissing> for Diagnostic {
    fn from(told: ThicknessMissing) -> Diagnostic {
        let ThicknessMissing {
            panel,
            layer,
            cloth,
            method,
            limit,
        } = told;
        CODE.report(format!(
            "the pleats of {panel} cannot be held to {limit}: its {layer} does not say how thick it is"
        ))
        .label(cloth, "this cloth has no thickness")
        .label(method, format!("allows {limit}"))
        .help("write the thickness of one layer in the fabric: `thickness: 0.4 mm`")
    }
}
