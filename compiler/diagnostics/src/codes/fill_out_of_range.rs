//! A filling panel whose share lies outside its limits.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "fill-out-of-range",
    severity: Severity::Error,
    page: "\
Panels that fill share equally what the other panels leave. Here the share lies outside the limits
that the panel states.

The limits are there because a panel looks wrong, or its pleats do not fall, when it is much wider
or narrower than it was designed.

Hang more or fewer panels, change the panels that do not fill, or widen the limits.
",
    failing: one_window! {
        panel: ["finished width: fill 20 in to 30 in", "drop: 14 in"],
    },
    mend: one_window! {
        panel: ["finished width: fill 20 in to 30 in", "drop: 14 in"],
        row: "front, front",
    },
};

/// A panel that fills gets a share of the row outside the bounds it was given.
pub struct FillOutOfRange {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// Where the panel says that it fills.
    pub width: Span,
    /// Where the row was written.
    pub row: Span,
    /// Where the window names its rod or board.
    pub support: Span,
    /// The length of the rod or board, returns included.
    pub to_cover: String,
    /// What the other panels take of it.
    pub taken: String,
    /// What that leaves for the panels that fill.
    pub left: String,
    /// What of that falls to this panel.
    pub share: String,
    /// The bound that the share breaks: "at most 30 in".
    pub bound: String,
    /// The share as it is typed in, where it is too wide; nothing where it is too narrow.
    pub to_write: Option<String>,
}

impl From<FillOutOfRange> for Diagnostic {
    fn from(told: FillOutOfRange) -> Diagnostic {
        let FillOutOfRange {
            panel,
            width,
            row,
            support,
            to_cover,
            taken,
            left,
            share,
            bound,
            to_write,
        } = told;
        let help = match to_write {
            Some(to_write) => format!("hang one panel more, or write `fill at most {to_write}`"),
            None => String::from("hang one panel fewer, or make the other panels narrower"),
        };
        CODE.report(format!(
            "the row leaves {share} for {panel}, which is to be {bound}"
        ))
        .label(width, format!("{bound}, and its share is {share}"))
        .label(row, format!("the other panels take {taken}"))
        .label(support, format!("{to_cover} to cover"))
        .sum(format!(
            "{to_cover} to cover - {taken} for the others = {left} left"
        ))
        .sum(format!("the share of one panel that fills: {share}"))
        .help(help)
    }
}
