//! A fold that passes the centre line into the other half.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "fold-crosses-centre",
    severity: Severity::Error,
    page: "\
A pleat that points at the centre takes up cloth between its fold and the centre, and its own fold
is brought inward by all of it. Here more is taken up than lies there, so that the fold ends in the
other half of the panel.

The other half does the same from its side. The two folds would have to lie in the same place, one
on the other, and the middle of the panel is lost under them.

TextPlace the fold farther from the centre, or make the pleats that point there shallower: the fold must
lie at least as far out as all that is taken up on the way, which is twice the depth of each knife
pleat.
",
    failing: one_window! {
        items: "\
pleats fan from centre, mirrored {
    knife 2 in toward centre, fold at 3 in
}
",
        panel: ["flat width: 48 in", "drop: 14 in", "pleats: fan"],
    },
    mend: one_window! {
        items: "\
pleats fan from centre, mirrored {
    knife 2 in toward centre, fold at 5 in
}
",
        panel: ["flat width: 48 in", "drop: 14 in", "pleats: fan"],
    },
};

/// A fold passes the centre of its panel into the other half.
pub struct FoldCrossesCentre {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// The step that makes the fold.
    pub step: Span,
    /// Where the panel names its pleats.
    pub pleats: Span,
    /// How far the fold lies from the centre, flat.
    pub fold_at: String,
    /// How much is taken up on the way from the centre to the fold, its own pleat included.
    pub taken_up: String,
    /// How far the fold passes the centre.
    pub amount: String,
    /// How to write its place so that it does not, where it has a place of its own: "fold at 9 in".
    pub further: Option<String>,
}

impl From<FoldCrossesCentre> for Diagnostic {
    fn from(told: FoldCrossesCentre) -> Diagnostic {
        let FoldCrossesCentre {
            panel,
            step,
            pleats,
            fold_at,
            taken_up,
            amount,
            further,
        } = told;
        let help = match further {
            Some(further) => {
                format!("write `{further}` or more, or make the pleats up to this one shallower")
            }
            None => format!(
                "add {amount} of plain cloth between this pleat and the centre, or make the pleats up to \
                 this one shallower"
            ),
        };
        CODE.report(format!(
            "in {panel}, a fold crosses the centre by {amount}"
        ))
        .label(step, format!("this fold ends {amount} beyond the centre"))
        .label(pleats, "the pleats of this panel")
        .sum(format!(
            "{taken_up} taken up on the way - {fold_at} from the centre to the fold = {amount} too far"
        ))
        .help(help)
    }
}
