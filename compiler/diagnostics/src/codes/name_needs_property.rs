//! A measure of the window that the window does not give.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "name-needs-property",
    severity: Severity::Error,
    page: "\
Inside a treatment, `opening-height`, `rod-diameter` and their like stand for measures of the window
that is being made. This window does not give the one that is asked for.

Add the property to the window, or to its rod.
",
    failing: Example::Text(
        "\
fabric calico { width: 45 in }
rod pole { length: 40 in, diameter: 1 in }
make seamed { seam: 1/2 in, lining: none }
treatment valance {
    panel front {
        finished width: fill
        drop: opening-height / 3
        head: over rod, tail 3 in
        make: seamed
        face: calico
    }
    row: front
}
window porch: valance { rod: pole }
",
    ),
    mend: Example::Text(
        "\
fabric calico { width: 45 in }
rod pole { length: 40 in, diameter: 1 in }
make seamed { seam: 1/2 in, lining: none }
treatment valance {
    panel front {
        finished width: fill
        drop: opening-height / 3
        head: over rod, tail 3 in
        make: seamed
        face: calico
    }
    row: front
}
window porch: valance { rod: pole, opening: 38 in x 45 in }
",
    ),
};

/// A name stands for a measure of the window that is not given.
pub struct NameNeedsProperty<'a> {
    /// Where the name is written.
    pub span: Span,
    /// The name as it is written: "opening-height".
    pub name: &'a str,
    /// The property of the window that would give the measure.
    pub property: &'a str,
}

impl From<NameNeedsProperty<'_>> for Diagnostic {
    fn from(told: NameNeedsProperty<'_>) -> Diagnostic {
        let NameNeedsProperty {
            span,
            name,
            property,
        } = told;
        CODE.report(format!(
            "`{name}` is asked for, but the window gives no `{property}`"
        ))
        .label(span, format!("this needs the `{property}`"))
        .help(format!(
            "add `{property}` to the window, or write a length here"
        ))
    }
}
