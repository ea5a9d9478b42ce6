//! A drop of less than its heading takes.

use crate::example::one_window;
use crate::{Code, Diagnostic, Fix, Severity, Span};

/// A drop of less than its heading takes.
pub const CODE: Code = Code {
    slug: "drop-too-short",
    severity: Severity::Error,
    page: "\
The drop is measured from the heading line down, and part of it is taken by the heading itself: half
the rod for a panel laid over one, the frill and the pocket for a panel with a rod pocket. Here the
drop is less than that.

The panel would end on the curve of the rod, or inside its own pocket.

Make the drop longer; it is measured from the top of the rod and not from below it.
",
    failing: one_window! {
        rod: "length: 40 in, diameter: 6 in",
        panel: ["finished width: 40 in", "drop: 2 in"],
        head: "over rod, tail 1 in",
    },
    mend: one_window! {
        rod: "length: 40 in, diameter: 6 in",
        panel: ["finished width: 40 in", "drop: 14 in"],
        head: "over rod, tail 1 in",
    },
};

/// The `drop` of `panel` is less than the `least` that its heading takes: `part` of what stands at
/// `taker` ("half of the rod"), as the `sum` shows, and so much is `missing`. The least is written `to_write`, where a drop was written.
pub fn drop_too_short(
    panel: &str,
    (drop, drop_text): (Span, &str),
    (taker, part, least): (Span, &str, &str),
    (sum, missing): (String, &str),
    to_write: Option<&str>,
) -> Diagnostic {
    let report = CODE
        .report(format!(
            "the drop of {panel} is {drop_text}, and its heading takes {least} of it"
        ))
        .label(drop, format!("{drop_text} from the heading line down"))
        .label(taker, format!("{part} takes {least}"))
        .sum(sum)
        .sum(format!(
            "{least} taken - {drop_text} of drop = {missing} missing"
        ));
    match to_write {
        Some(to_write) => report
            .help(format!("write `drop: {to_write}` or more"))
            .fix(Fix::replace(
                format!("make the drop {to_write}"),
                drop,
                to_write,
            )),
        None => report.help(format!("make the drop {least} or more")),
    }
}
