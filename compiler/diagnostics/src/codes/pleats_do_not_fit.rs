//! A width that the pleat rule cannot meet with any number of pleats.

use crate::example::one_window;
use crate::{Code, Diagnostic, Fix, PlacedText, Severity, Span, counted};

/// Its page for `pelmet explain`, with an example and the mend.
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

/// A width that some number of pleats brings a panel to.
pub struct FittingWidth {
    /// The width, of the kind that is wanted.
    pub text: String,
    /// How many pleats bring it about.
    pub pleats: u32,
    /// What to write for it, where the width was written at all and not left to the row.
    pub to_write: Option<String>,
}

/// No number of pleats brings a panel to the width it is to have.
pub struct PleatsDoNotFit {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// Where the panel names its pleats.
    pub pleats: Span,
    /// The width it is to have, where that was stated.
    pub wanted: PlacedText,
    /// Which width that is: "finished width" or "flat width".
    pub kind: &'static str,
    /// The property that stated it: "fullness".
    pub property: &'static str,
    /// The nearest widths that can be met, nearest first.
    pub fitting: Vec<FittingWidth>,
    /// Whether some plain cloth between the pleats has a range already.
    pub has_range: bool,
}

impl From<PleatsDoNotFit> for Diagnostic {
    fn from(told: PleatsDoNotFit) -> Diagnostic {
        let PleatsDoNotFit {
            panel,
            pleats,
            wanted,
            kind,
            property,
            fitting,
            has_range,
        } = told;
        let diagnostic = CODE
            .report(format!(
                "no number of pleats brings {panel} to a {kind} of {wanted}"
            ))
            .label(wanted.span, format!("a {kind} of {wanted}"))
            .label(pleats, "cannot be met by these pleats");
        let diagnostic = fitting.iter().fold(diagnostic, |diagnostic, width| {
            let pleats = counted(width.pleats as usize, "pleat");
            diagnostic.sum(format!("{pleats}: a {kind} of {}", width.text))
        });
        let to_write = fitting.iter().filter_map(|width| width.to_write.as_deref());
        let lines: Vec<String> = to_write
            .map(|value| format!("`{property}: {value}`"))
            .collect();
        let range = if has_range {
            "give the spaces of the pleats a wider range"
        } else {
            "give a space of the pleats a range, such as `space 3 in to 4 in`"
        };
        let Some(nearest) = fitting.first().and_then(|width| width.to_write.as_deref()) else {
            return diagnostic.help(range);
        };
        diagnostic
            .help(format!("write {}", lines.join(" or ")))
            .help(format!("or {range}"))
            .fix(Fix::replace(
                format!("write {nearest}, the nearest that works"),
                wanted.span,
                nearest,
            ))
    }
}
