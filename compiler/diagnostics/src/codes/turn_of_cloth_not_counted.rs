//! Cloth whose turn at each crease is not counted, since one layer does not say how thick it is.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "turn-of-cloth-not-counted",
    severity: Severity::Note,
    page: "\
Going round a crease, cloth uses up a little of the flat width: about half of pi times the thickness
of everything that is folded there together. Where every cloth of a panel says how thick it is, that
is counted, and the packet shows the sum. Here one cloth of the panel says so and another does not,
so nothing is counted.

Left out, it is missing from the finished width: in a thick cloth with many pleats, half an inch and
more.

Press a few layers of the other cloth, measure them together, and write the thickness of one:
`thickness: 0.4 mm`. To leave the turn out on purpose, write `turn of cloth: none` in the pleat
rule; to state what a folded sample showed, `turn of cloth: 1 mm each crease`.
",
    failing: one_window! {
        fabric: "width: 54 in, thickness: 1/32 in",
        make: "seam: 1/2 in, lining: as face",
        items: "\
fabric sateen { width: 54 in }
pleats single {
    knife 2 in toward left, fold at 25 in
}
",
        panel: ["finished width: 40 in", "drop: 14 in", "pleats: single", "lining: sateen"],
    },
    mend: one_window! {
        fabric: "width: 54 in, thickness: 1/32 in",
        make: "seam: 1/2 in, lining: as face",
        items: "\
fabric sateen { width: 54 in, thickness: 1/64 in }
pleats single {
    turn of cloth: 1/16 in each crease
    knife 2 in toward left, fold at 25 in
}
",
        panel: ["finished width: 40 in", "drop: 14 in", "pleats: single", "lining: sateen"],
    },
};

/// One cloth of a panel says how thick it is and another does not, so no turn of cloth is counted.
pub struct TurnOfClothNotCounted {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// Which layer it is: "face", "lining".
    pub layer: &'static str,
    /// Where the panel names the cloth that does not say.
    pub cloth: Span,
    /// Where the panel names its pleats.
    pub pleats: Span,
}

impl From<TurnOfClothNotCounted> for Diagnostic {
    fn from(told: TurnOfClothNotCounted) -> Diagnostic {
        let TurnOfClothNotCounted {
            panel,
            layer,
            cloth,
            pleats,
        } = told;
        let why = format!("its {layer} does not say how thick it is");
        CODE.report(title(&panel, &why))
            .label(cloth, "this cloth has no thickness")
            .label(pleats, "so its creases are taken to lose nothing")
            .help("write the thickness of one layer in the fabric: `thickness: 0.4 mm`")
            .help("or leave the turn out on purpose, in the pleat rule: `turn of cloth: none`")
    }
}

/// No turn of cloth is counted in the pleats of `panels`, since none of their cloths has a thickness.
/// Of a design that never speaks of thickness nothing is mended; the packet alone says so.
pub fn in_no_cloth(panels: &str) -> Diagnostic {
    CODE.report(title(panels, "their cloths do not say how thick they are"))
}

fn title(panels: &str, why: &str) -> String {
    format!("no turn of cloth is counted in the pleats of {panels}: {why}")
}
