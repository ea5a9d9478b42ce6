//! A size that comes out larger than any panel.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "size-too-large",
    severity: Severity::Error,
    page: "\
A size of the panel is worked out to more than ten kilometres, which is the largest length there is
here.

No panel is that large. A unit is probably wrong, or a fullness has lost its point.

Correct the number it is worked out from.
",
    failing: one_window! {
        rod: "length: 9000 m, diameter: 1 in",
        panel: ["finished width: 9000 m", "fullness: 2 times", "drop: 14 in"],
    },
    mend: one_window! {
        fabric: "width: 118 in",
        rod: "length: 40 in, diameter: 1 in",
        panel: ["finished width: 40 in", "fullness: 2 times", "drop: 14 in"],
    },
};

/// A size of a panel comes out beyond what can be reckoned with.
pub struct SizeTooLarge<'a> {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// Where what it is worked out from was written.
    pub place: Span,
    /// Which size: "flat width".
    pub size: &'a str,
    /// The most that can be reckoned with: "10 km".
    pub largest: String,
}

impl From<SizeTooLarge<'_>> for Diagnostic {
    fn from(told: SizeTooLarge<'_>) -> Diagnostic {
        let SizeTooLarge {
            panel,
            place,
            size,
            largest,
        } = told;
        CODE.report(format!("the {size} of {panel} is more than {largest}"))
            .label(place, format!("makes a {size} of more than {largest}"))
            .help("look for a unit that is wrong or a number that has lost its point")
    }
}
