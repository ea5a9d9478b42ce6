//! Pleats that take more cloth than there is.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// Pleats that take more cloth than there is.
pub const CODE: Code = Code {
    slug: "pleats-take-too-much",
    severity: Severity::Error,
    page: "\
The pleats of the panel, and the places where its folds are to lie, take more than its flat width.

Folding starts at one side, and before the other is reached there is no cloth left to fold.

Make the panel wider, or its pleats fewer or shallower.
",
    failing: one_window! {
        items: "\
pleats pair from centre, mirrored {
    knife 2 in toward centre, fold at 26 in
}
",
        panel: ["flat width: 48 in", "drop: 14 in", "pleats: pair"],
    },
    mend: one_window! {
        items: "\
pleats pair from centre, mirrored {
    knife 2 in toward centre, fold at 16 in
}
",
        panel: ["flat width: 48 in", "drop: 14 in", "pleats: pair"],
    },
};

/// The pleats of `panel` take `taken` of flat cloth and there is `flat`, `missing` too little; the
/// least width to write instead goes with its property ("flat width", "20 in").
pub fn pleats_take_too_much(
    panel: &str,
    (width, pleats): (Span, Span),
    (flat, taken, missing): (&str, &str, &str),
    to_write: Option<(&str, &str)>,
) -> Diagnostic {
    let help = match to_write {
        Some((key, value)) => {
            format!("write `{key}: {value}` or more, or make the pleats fewer or shallower")
        }
        None => String::from("make the panel wider, or the pleats fewer or shallower"),
    };
    CODE.report(format!(
        "the pleats of {panel} take {taken} of flat cloth, and there is {flat}"
    ))
    .label(width, format!("{flat} flat"))
    .label(pleats, format!("takes {taken}"))
    .sum(format!(
        "{taken} for pleats and spaces - {flat} flat = {missing} missing"
    ))
    .help(help)
}
