//! A rod pocket too small for its rod.

use crate::example::one_window;
use crate::{Code, Diagnostic, Fix, Severity, Span};

/// A rod pocket too small for its rod.
pub const CODE: Code = Code {
    slug: "pocket-too-small",
    severity: Severity::Error,
    page: "\
A rod pocket is sewn flat: two layers as deep as the pocket. Opened, they must reach round the rod,
so the pocket must be at least half as deep as the rod is round, which is 1.57 times its diameter.

A smaller pocket does not go over the rod at all, and one that only just does tears at its seams or
will not slide.

Make the pocket deeper, or leave its depth out: it then follows from the rod and the ease.
",
    failing: one_window! {
        panel: ["finished width: 40 in", "drop: 14 in"],
        head: "rod pocket, pocket 1 in",
    },
    mend: one_window! {
        panel: ["finished width: 40 in", "drop: 14 in"],
        head: "rod pocket, pocket 2 in",
    },
};

/// The `pocket` of `panel` is less deep than the `least` that goes round its rod of the `diameter`;
/// that is written `to_write`, where the pocket itself was written.
pub fn pocket_too_small(
    panel: &str,
    (pocket, pocket_text): (Span, &str),
    (support, diameter): (Span, &str),
    least: &str,
    to_write: Option<&str>,
) -> Diagnostic {
    let report = CODE
        .report(format!(
            "the pocket of {panel} is {pocket_text} deep, and its rod needs {least}"
        ))
        .label(pocket, format!("{pocket_text} deep"))
        .label(support, format!("{diameter} thick"))
        .sum(format!(
            "{diameter} thick x 3.1416 = the way round the rod; half of it = {least} at the least"
        ));
    match to_write {
        Some(to_write) => report
            .help(format!("write `pocket {to_write}` or more"))
            .fix(Fix::replace(
                format!("make the pocket {to_write} deep"),
                pocket,
                to_write,
            )),
        None => report.help("make the pocket deeper, or leave its depth out"),
    }
}
