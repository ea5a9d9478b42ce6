//! Returns that are not as deep as the rod stands off the wall.

use crate::example::one_window;
use crate::{Code, Diagnostic, Fix, PlacedText, Severity};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "return-and-projection-differ",
    severity: Severity::Warning,
    page: "\
The return is the part of an end panel that turns back to the wall. The rod or board stands off the
wall by another length.

A return that is too short leaves a slit of light at the wall; one that is too long buckles at the
corner or stands out from it.

Make the returns as long as the projection of the rod or the depth of the board.
",
    failing: one_window! {
        rod: "length: 40 in, diameter: 1 in, projection: 3 in",
        panel: ["finished width: fill", "drop: 14 in"],
        row: "front\n    returns: 2 in",
    },
    mend: one_window! {
        rod: "length: 40 in, diameter: 1 in, projection: 3 in",
        panel: ["finished width: fill", "drop: 14 in"],
        row: "front\n    returns: 3 in",
    },
};

/// The returns of a window are not as long as its rod or board stands off the wall.
pub struct ReturnAndProjectionDiffer {
    /// The window, as a sentence names it: "the window `north`".
    pub window: String,
    /// How far the row turns back to the wall at its ends.
    pub returns: PlacedText,
    /// How far the rod or board stands off the wall.
    pub projection: PlacedText,
    /// How much the two differ.
    pub amount: String,
    /// Whether the returns are the shorter.
    pub too_short: bool,
    /// The projection as it is typed in, where returns were written.
    pub to_write: Option<String>,
}

impl From<ReturnAndProjectionDiffer> for Diagnostic {
    fn from(told: ReturnAndProjectionDiffer) -> Diagnostic {
        let ReturnAndProjectionDiffer {
            window,
            returns,
            projection,
            amount,
            too_short,
            to_write,
        } = told;
        let sum = if too_short {
            format!("{projection} off the wall - {returns} of return = {amount} too short")
        } else {
            format!("{returns} of return - {projection} off the wall = {amount} too long")
        };
        let diagnostic = CODE
            .report(format!(
                "the returns of {window} are {returns}, and it stands {projection} off the wall"
            ))
            .label(returns.span, format!("{returns} turned back"))
            .label(projection.span, format!("{projection} off the wall"))
            .sum(sum);
        match to_write {
            Some(to_write) => {
                diagnostic
                    .help(format!("write `returns: {to_write}`"))
                    .fix(Fix::replace(
                        format!("make the returns {to_write}"),
                        returns.span,
                        to_write,
                    ))
            }
            None => diagnostic.help("make the returns as long as it stands off the wall"),
        }
    }
}
