//! Two widths of a panel that cannot both be right.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// Two widths of a panel that cannot both be right.
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

/// Two widths of `panel` disagree by `difference`: each with its place, its name ("flat width") and
/// its length.
pub fn widths_disagree(
    panel: &str,
    (first, first_name, first_text): (Span, &str, &str),
    (second, second_name, second_text): (Span, &str, &str),
    difference: &str,
) -> Diagnostic {
    let report = CODE
        .report(format!("the widths of {panel} disagree by {difference}"))
        .label(second, format!("a {second_name} of {second_text}"));
    let report = if first == second {
        report
    } else {
        report.label(first, format!("a {first_name} of {first_text}"))
    };
    report
        .sum(format!(
            "{first_name} {first_text}, {second_name} {second_text}: {difference} apart"
        ))
        .help("leave one of the two out, or correct the one that is wrong")
}
