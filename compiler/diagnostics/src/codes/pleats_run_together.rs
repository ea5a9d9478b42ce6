//! Two pleats that need the same flat cloth.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// Two pleats that need the same flat cloth.
pub const CODE: Code = Code {
    slug: "pleats-run-together",
    severity: Severity::Error,
    page: "\
A pleat uses a stretch of the flat cloth: twice its depth for a knife pleat, four times its depth
and its face for a box. The stretches of two pleats lie partly on the same cloth.

Cloth can be folded into one pleat only. On the table the second pleat would come out shallower than
planned, and everything after it would move.

Place the second pleat farther on, or make one of the two shallower.
",
    failing: one_window! {
        items: "\
pleats pair {
    knife 2 in toward left, fold at 10 in
    knife 2 in toward left, fold 3 in on
}
",
        panel: ["flat width: 48 in", "drop: 14 in", "pleats: pair"],
    },
    mend: one_window! {
        items: "\
pleats pair {
    knife 2 in toward left, fold at 10 in
    knife 2 in toward left, fold 6 in on
}
",
        panel: ["flat width: 48 in", "drop: 14 in", "pleats: pair"],
    },
};

/// The steps `first` and `second` of the pleats of `panel` both need `amount` of the flat cloth: from
/// the `start` ("left edge"), one `ends` farther on than the other `begins`;
/// `further` is how to place the second, if it is placed at all.
pub fn pleats_run_together(
    panel: &str,
    (first, second, pleats): (Span, Span, Span),
    amount: &str,
    (start, ends, begins): (&str, &str, &str),
    further: Option<String>,
) -> Diagnostic {
    let help = match further {
        Some(further) => format!("write `{further}` or more, or make one of the two shallower"),
        None => {
            format!("add {amount} of plain cloth between the two, or make one of them shallower")
        }
    };
    let report = CODE
        .report(format!(
            "the pleats of {panel} need the same {amount} of flat cloth twice"
        ))
        .label(second, format!("begins {amount} before its neighbour ends"));
    let report = if first == second {
        report
    } else {
        report.label(first, "its neighbour")
    };
    report
        .label(pleats, "the pleats of this panel")
        .sum(format!(
            "from the {start}: {ends} to the end of one - {begins} to the beginning of the next = \
             {amount} needed twice"
        ))
        .help(help)
}
