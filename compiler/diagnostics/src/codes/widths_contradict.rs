//! A flat and a finished width that the pleats do not join.

use crate::example::one_window;
use crate::{Code, Diagnostic, Fix, PlacedText, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
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

/// The pleats of a panel take up another length than lies between its two widths.
pub struct WidthsContradict {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// Where the panel names its pleats.
    pub pleats: Span,
    /// The finished width, where something gives it.
    pub finished: PlacedText,
    /// The flat width, where something gives it.
    pub flat: PlacedText,
    /// The length between the two.
    pub difference: String,
    /// The take-up of the pleats that comes nearest.
    pub take_up: String,
    /// What each crease of that loses to the turn of the cloth, where it is counted.
    pub turns: Option<String>,
    /// The property that stated the flat width: "cut width".
    pub flat_property: &'static str,
    /// What to write for it, where it was stated as a length.
    pub to_write: Option<String>,
}

impl From<WidthsContradict> for Diagnostic {
    fn from(told: WidthsContradict) -> Diagnostic {
        let WidthsContradict {
            panel,
            pleats,
            finished,
            flat,
            difference,
            take_up,
            turns,
            flat_property,
            to_write,
        } = told;
        let turns = turns.map_or_else(String::new, |each| {
            format!(", {each} at each crease for the turn of the cloth included")
        });
        let diagnostic = CODE
            .report(format!(
                "the pleats of {panel} do not join its flat width to its finished width"
            ))
            .label(flat.span, format!("{flat} flat"))
            .label(finished.span, format!("{finished} finished"))
            .label(pleats, format!("takes up {take_up}"))
            .sum(format!(
                "{flat} flat - {finished} finished = {difference} to take up"
            ))
            .sum(format!("the pleats take up {take_up}{turns}"));
        match to_write {
            Some(value) => diagnostic
                .help(format!(
                    "write `{flat_property}: {value}`, or leave one of the two widths out: the pleats give the other"
                ))
                .fix(Fix::replace(
                    format!("write {value} for the {flat_property}"),
                    flat.span,
                    value,
                )),
            None => diagnostic.help("leave one of the two widths out: the pleats give the other"),
        }
    }
}
