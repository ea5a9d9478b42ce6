//! A width that the pleat rule cannot meet with any number of pleats.

use crate::example::one_window;
use crate::{Code, Diagnostic, Fix, Severity, Span, counted};

/// A width that the pleat rule cannot meet with any number of pleats.
pub const CODE: Code = Code {
    slug: "pleats-do-not-fit",
    severity: Severity::Error,
    page: "\
Nothing that the pleat rule leaves open brings the panel to the width that is asked for. One pleat
fewer is too narrow, one more is too wide, and the rule does not let the plain cloth or the depths
make up the difference.

Folded as it is, the panel would come out at another width, and the row would gape or crowd.

Take one of the two widths in the report, or let the rule give way: a range such as `space 3 in to 4
in` leaves the plain cloth room to meet any width.
",
    failing: one_window! {
        fabric: "width: 118 in",
        items: "\
pleats even {
    margin 2 in
    repeat: box 1 1/2 in, space 3 in
    margin 2 in
}
",
        panel: ["finished width: 40 in", "drop: 14 in", "pleats: even"],
    },
    mend: one_window! {
        fabric: "width: 118 in",
        items: "\
pleats even {
    margin 2 in
    repeat: box 1 1/2 in, space 3 in to 4 in
    margin 2 in
}
",
        panel: ["finished width: 40 in", "drop: 14 in", "pleats: even"],
    },
};

/// A width that does work.
pub struct FittingWidth {
    /// As a message says it.
    pub text: String,
    /// How many pleats it has.
    pub pleats: u32,
    /// What to write for it, where the width was written at all and not left to the row.
    pub to_write: Option<String>,
}

/// No count of pleats brings `panel` to the `wanted` width, which is of the `kind` "finished width"
/// or "flat width" and stated by the `property`; `fitting` are the nearest that do, nearest first. `has_range` tells whether some plain cloth
/// between the pleats has a range already.
pub fn pleats_do_not_fit(
    panel: &str,
    (width, pleats): (Span, Span),
    (kind, wanted): (&str, &str),
    property: &str,
    fitting: &[FittingWidth],
    has_range: bool,
) -> Diagnostic {
    let report = CODE
        .report(format!(
            "no number of pleats brings {panel} to a {kind} of {wanted}"
        ))
        .label(width, format!("a {kind} of {wanted}"))
        .label(pleats, "cannot be met by these pleats");
    let report = fitting.iter().fold(report, |report, width| {
        let pleats = counted(width.pleats as usize, "pleat");
        report.sum(format!("{pleats}: a {kind} of {}", width.text))
    });
    let to_write = fitting.iter().filter_map(|width| width.to_write.as_deref());
    let lines: Vec<String> = to_write
        .map(|value| format!("`{property}: {value}`"))
        .collect();
    let range = if has_range {
        "give the spaces of the pleats a wider range"
    } else {
        "give a space of the pleats a range, such as `space 3 in to 4 in`"
    };
    let Some(nearest) = fitting.first().and_then(|width| width.to_write.as_deref()) else {
        return report.help(range);
    };
    report
        .help(format!("write {}", lines.join(" or ")))
        .help(format!("or {range}"))
        .fix(Fix::replace(
            format!("write {nearest}, the nearest that works"),
            width,
            nearest,
        ))
}
