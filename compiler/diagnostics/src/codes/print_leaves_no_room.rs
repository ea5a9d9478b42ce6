//! A piece that fits its cloth, but not where the print holds it.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "print-leaves-no-room",
    severity: Severity::Error,
    page: "\
Each piece of a printed cloth is cut where the print falls alike: its heading line on a line of the
repeat, and its middle too where a motif is centred on it. Held there, this piece would reach past
the end of the cloth, although the cloth is large enough for it elsewhere.

Cut anywhere else, the motif would sit off its place, or the print would not meet its neighbour's.

Choose a cloth that is wider or comes in longer lengths, make the panel smaller, or move the motif.
",
    failing: one_window! {
        fabric: "width: 54 in, repeat: 20 in along, 36 in across",
        panel: ["finished width: 40 in", "drop: 14 in"],
        window: "rod: pole, motif: centred on front, 6 in below heading",
    },
    mend: one_window! {
        fabric: "width: 54 in, repeat: 20 in along, 24 in across",
        panel: ["finished width: 40 in", "drop: 14 in"],
        window: "rod: pole, motif: centred on front, 6 in below heading",
    },
};

/// The print lets a piece begin only where it reaches past the end of its cloth.
pub struct PrintLeavesNoRoom {
    /// The piece, as a sentence names it: "the face of the panel `bib` of `north`".
    pub piece: String,
    /// Where the panel names the cloth.
    pub cloth: Span,
    /// Where the cloth was described, if that is known.
    pub fabric: Option<Span>,
    /// The first place where the print lets it begin.
    pub start: String,
    /// How far the piece reaches from there on.
    pub size: String,
    /// How far along or across the cloth it would end.
    pub end: String,
    /// How far the cloth reaches.
    pub room: String,
    /// How far the piece would reach past that.
    pub beyond: String,
}

impl From<PrintLeavesNoRoom> for Diagnostic {
    fn from(told: PrintLeavesNoRoom) -> Diagnostic {
        let PrintLeavesNoRoom {
            piece,
            cloth,
            fabric,
            start,
            size,
            end,
            room,
            beyond,
        } = told;
        CODE.report(format!(
            "{piece} does not fit on its cloth where the print holds it"
        ))
        .label(cloth, format!("{beyond} too large for this cloth"))
        .label_if_known(fabric, format!("{room} to cut from"))
        .sum(format!("{start} to the print + {size} to cut = {end}"))
        .sum(format!("{end} - {room} of cloth = {beyond} missing"))
        .help("choose a larger cloth, make the panel smaller, or move the motif")
    }
}
