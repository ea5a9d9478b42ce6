//! A width that the pleat rule cannot meet with any number of pleats.

use crate::example::one_window;
use crate::{Code, Diagnostic, Fix, Severity, Span, counted, listed};

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
pub struct FittingWidth<'a> {
    /// As a message says it.
    pub text: &'a str,
    /// How many pleats it has.
    pub pleats: u32,
    /// The property and value to write for it ("finished width", "31 in"), where the width was
    /// written at all and not left to the row.
    pub to_write: Option<(&'a str, &'a str)>,
}

/// No count of pleats brings `panel` to the `wanted` width, which is of the `kind` "finished width"
/// or "flat width"; `fitting` are the nearest that do, nearest first.
pub fn pleats_do_not_fit(
    panel: &str,
    (width, pleats): (Span, Span),
    (kind, wanted): (&str, &str),
    fitting: &[FittingWidth<'_>],
) -> Diagnostic {
    let report = CODE
        .report(format!(
            "no number of pleats brings {panel} to a {kind} of {wanted}"
        ))
        .label(width, format!("a {kind} of {wanted}"))
        .label(pleats, "cannot be met by these pleats");
    let report = fitting.iter().fold(report, |report, width| {
        let pleats = counted(width.pleats as usize, "pleat");
        report.sum(format!("{pleats}: {}", width.text))
    });
    let lines: Vec<String> = fitting.iter().filter_map(FittingWidth::line).collect();
    let lines: Vec<&str> = lines.iter().map(String::as_str).collect();
    let report = if lines.is_empty() {
        report
    } else {
        report.help(format!("write {}", listed(&lines, "or")))
    };
    let report = report.help("or give a space of the pleats a range, such as `space 3 in to 4 in`");
    match fitting.first().and_then(|nearest| nearest.to_write) {
        Some((_, value)) => report.fix(Fix::replace(
            format!("take the nearest width that works, {value}"),
            width,
            value,
        )),
        None => report,
    }
}

impl FittingWidth<'_> {
    fn line(&self) -> Option<String> {
        let (key, value) = self.to_write?;
        Some(format!("`{key}: {value}`"))
    }
}
