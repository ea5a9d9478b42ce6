//! A flat and a finished width that the pleats do not join.

use crate::example::one_window;
use crate::{Code, Diagnostic, Fix, Severity, Span};

/// A flat and a finished width that the pleats do not join.
pub const CODE: Code = Code {
    slug: "widths-contradict",
    severity: Severity::Error,
    page: "\
The panel says both how wide it is flat and how wide it hangs. The pleats should take up exactly the
difference, and nothing the rule allows does.

One of the three is wrong. Cut by the flat width, the panel hangs at another width than planned;
folded to the finished width, its pleats come out at another depth.

Leave out the width that follows from the other, correct it, or give the depth of the pleats a
range.
",
    failing: one_window! {
        items: "\
pleats pair from centre, mirrored {
    space 4 in
    knife 2 in toward centre
    rest
}
",
        panel: ["finished width: 40 in", "flat width: 46 in", "drop: 14 in", "pleats: pair"],
    },
    mend: one_window! {
        items: "\
pleats pair from centre, mirrored {
    space 4 in
    knife 2 in toward centre
    rest
}
",
        panel: ["finished width: 40 in", "flat width: 48 in", "drop: 14 in", "pleats: pair"],
    },
};

/// The `finished` and the `flat` width of `panel` differ by `difference`, and the pleats take up
/// `take_up`, of which `turns` says what the creases lose; `flat_line` is the flat width to write instead ("flat width", "48 in").
pub fn widths_contradict(
    panel: &str,
    (finished, finished_text): (Span, &str),
    (flat, flat_text): (Span, &str),
    (pleats, difference, take_up): (Span, &str, &str),
    turns: Option<&str>,
    flat_line: Option<(&str, &str)>,
) -> Diagnostic {
    let turns = turns.map_or_else(String::new, |each| {
        format!(", {each} at each crease for the turn of the cloth included")
    });
    let report = CODE
        .report(format!(
            "the pleats of {panel} do not join its flat width to its finished width"
        ))
        .label(flat, format!("{flat_text} flat"))
        .label(finished, format!("{finished_text} finished"))
        .label(pleats, format!("takes up {take_up}"))
        .sum(format!(
            "{flat_text} flat - {finished_text} finished = {difference} to take up"
        ))
        .sum(format!("the pleats take up {take_up}{turns}"));
    match flat_line {
        Some((key, value)) => report
            .help(format!(
                "write `{key}: {value}`, or leave one of the two widths out: the pleats give the other"
            ))
            .fix(Fix::replace(
                format!("write {value} for the {key}"),
                flat,
                value,
            )),
        None => report.help("leave one of the two widths out: the pleats give the other"),
    }
}
