//! A seam between widths of cloth where it is seen.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// A seam between widths of cloth where it is seen.
pub const CODE: Code = Code {
    slug: "seam-shows",
    severity: Severity::Warning,
    page: "\
The panel is wider than its cloth and is joined from several widths. A whole width lies in the
middle, with part widths outside, and a seam between them lies where no pleat hides it.

A seam across plain cloth catches the light and breaks the print. In a pleat it is not seen at all.

Choose a wider cloth, move a pleat so that the seam falls inside it, or accept the seam with a
reason.
",
    failing: one_window! {
        fabric: "width: 30 in",
        items: "\
pleats pair from centre, mirrored {
    space 4 in
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
    space 4 in
    knife 2 in toward centre
    rest
}
",
        panel: ["flat width: 48 in", "drop: 14 in", "pleats: pair"],
    },
};

/// A seam in the `layer` of `panel` lies `at` this far from its left edge, flat, and is seen.
pub fn seam_shows(panel: &str, layer: &str, (cloth, pleats): (Span, Span), at: &str) -> Diagnostic {
    CODE.report(format!("a seam in the {layer} of {panel} shows"))
        .label(cloth, "joined from several widths of this cloth")
        .label(
            pleats,
            format!("no pleat hides the seam {at} from the left edge"),
        )
        .help("choose a wider cloth, or move a pleat so that the seam falls inside it")
}
