//! A space or depth whose range never brings the print round.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// A space or depth whose range never brings the print round.
pub const CODE: Code = Code {
    slug: "print-out-of-reach",
    severity: Severity::Error,
    page: "\
The pleats follow the print: from the middle of one pleat to the middle of the next, the flat cloth
must come to whole repeats. Nothing in the range of this length does that.

Widen the range to one of the two lengths named, or change the depth of the pleats.
",
    failing: one_window! {
        fabric: "width: 54 in, repeat: 4 in across",
        items: "\
pleats on-stripes {
    print: spaces follow
    margin 1 in to 30 in
    repeat 3 times: knife 1 in toward left, space 3 in to 5 in
    margin 1 in to 30 in
}
",
        panel: ["finished width: 40 in", "drop: 14 in", "pleats: on-stripes"],
    },
    mend: one_window! {
        fabric: "width: 54 in, repeat: 4 in across",
        items: "\
pleats on-stripes {
    print: spaces follow
    margin 1 in to 30 in
    repeat 3 times: knife 1 in toward left, space 2 in to 5 in
    margin 1 in to 30 in
}
",
        panel: ["finished width: 40 in", "drop: 14 in", "pleats: on-stripes"],
    },
};

/// No length allowed at `step` brings a print of this `repeat` round to the next pleat of `panel`;
/// the `nearest` ones that would, each with one of the `sums`.
pub fn print_out_of_reach(
    panel: &str,
    (step, pleats): (Span, Span),
    repeat: &str,
    nearest: &[String],
    sums: Vec<String>,
) -> Diagnostic {
    let report = CODE
        .report(format!(
            "the print does not come round from pleat to pleat of {panel}"
        ))
        .label(
            step,
            format!("no length here gives whole repeats of {repeat}"),
        )
        .label(pleats, "pleated by this rule");
    sums.into_iter()
        .fold(report, Diagnostic::sum)
        .help(format!("allow {} here", nearest.join(" or ")))
}
