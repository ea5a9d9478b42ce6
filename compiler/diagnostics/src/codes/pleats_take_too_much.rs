//! Pleats that take more cloth than there is.

use crate::example::one_window;
use crate::{Code, Diagnostic, PlacedText, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
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

/// The pleats of a panel take more flat cloth than it has.
pub struct PleatsTakeTooMuch {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// Where the panel names its pleats.
    pub pleats: Span,
    /// The flat width there is, where it was stated.
    pub flat: PlacedText,
    /// What the pleats and spaces take.
    pub taken: String,
    /// By how much the flat width is too small.
    pub missing: String,
    /// The line that states enough: "flat width: 20 in"; nothing where no length was stated.
    pub to_write: Option<String>,
}

impl From<PleatsTakeTooMuch> for Diagnostic {
    fn from(told: PleatsTakeTooMuch) -> Diagnostic {
        let PleatsTakeTooMuch {
            panel,
            pleats,
            flat,
            taken,
            missing,
            to_write,
        } = told;
        let help = match to_write {
            Some(line) => {
                format!("write `{line}` or more, or make the pleats fewer or shallower")
            }
            None => String::from("make the panel wider, or the pleats fewer or shallower"),
        };
        CODE.report(format!(
            "the pleats of {panel} take {taken} of flat cloth, and there is {flat}"
        ))
        .label(flat.span, format!("{flat} flat"))
        .label(pleats, format!("takes {taken}"))
        .sum(format!(
            "{taken} for pleats and spaces - {flat} flat = {missing} missing"
        ))
        .help(help)
    }
}
