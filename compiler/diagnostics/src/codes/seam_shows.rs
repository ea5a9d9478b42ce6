//! A seam between widths of cloth where it is seen.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "seam-shows",
    severity: Severity::Warning,
    page: "\
The panel is wider than its cloth and is joined from several widths: a whole width in the middle, with
part widths outside. Its seams are moved to the nearest places that pleats hide, but here the cloth is
too narrow for its strips to reach one.

A seam across plain cloth catches the light and breaks the print. In a pleat it is not seen at all.

Choose a wider cloth, move the pleats so that the seam falls inside it, or accept the seam with a
reason.
",
    failing: one_window! {
        fabric: "width: 18 in",
        items: "\
pleats pair from centre, mirrored {
    space 1 in
    knife 2 in toward centre
    rest
}
",
        panel: ["flat width: 48 in", "drop: 14 in", "pleats: pair"],
    },
    mend: one_window! {
        fabric: "width: 54 in",
        items: "\
pleats pair from centre, mirrored {
    space 1 in
    knife 2 in toward centre
    rest
}
",
        panel: ["flat width: 48 in", "drop: 14 in", "pleats: pair"],
    },
};

/// A seam between two widths of cloth lies where it is seen.
pub struct SeamShows {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// Which layer it is: "face", "lining".
    pub layer: &'static str,
    /// Where the panel names the cloth.
    pub cloth: Span,
    /// Where the panel names its pleats.
    pub pleats: Span,
    /// How far the seam lies from the left edge, flat.
    pub at: String,
    /// How far to move the pleats so that one hides it: "2 in to the left".
    pub moved: Option<String>,
    /// How that comes about.
    pub sum: Option<String>,
}

impl From<SeamShows> for Diagnostic {
    fn from(told: SeamShows) -> Diagnostic {
        let SeamShows {
            panel,
            layer,
            cloth,
            pleats,
            at,
            moved,
            sum,
        } = told;
        let nearest = moved.map_or_else(
            || String::from("choose a wider cloth, or put a pleat where the seam falls"),
            |moved| format!("choose a wider cloth, or move the pleats {moved}: that hides it"),
        );
        let diagnostic = CODE
            .report(format!("a seam in the {layer} of {panel} shows"))
            .label(cloth, "joined from several widths of this cloth")
            .label(
                pleats,
                format!("no pleat hides the seam {at} from the left edge"),
            );
        sum.into_iter()
            .fold(diagnostic, Diagnostic::sum)
            .help(nearest)
    }
}
