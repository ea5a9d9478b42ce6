//! A seam between widths of cloth where it is seen.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// A seam between widths of cloth where it is seen.
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

/// A seam in the `layer` of `panel` lies `at` this far from its left edge, flat, and is seen. With
/// its pleats moved `pleats_by` so much in that direction, one of them would hide it.
pub fn seam_shows(
    panel: &str,
    layer: &str,
    (cloth, pleats): (Span, Span),
    at: &str,
    pleats_by: Option<(&str, &str)>,
    sum: Option<String>,
) -> Diagnostic {
    let nearest = pleats_by.map_or_else(
        || String::from("choose a wider cloth, or put a pleat where the seam falls"),
        |(by, way)| {
            format!("choose a wider cloth, or move the pleats {by} to the {way}: that hides it")
        },
    );
    let report = CODE
        .report(format!("a seam in the {layer} of {panel} shows"))
        .label(cloth, "joined from several widths of this cloth")
        .label(
            pleats,
            format!("no pleat hides the seam {at} from the left edge"),
        );
    sum.into_iter().fold(report, Diagnostic::sum).help(nearest)
}
