//! Findings in the pleats.

use pelmet_measure::Length;

use crate::Layer;

/// Findings in the pleats. `step` is the number of a written step.
#[derive(Clone, PartialEq, Debug)]
pub enum PleatMatter {
    /// Neither width is given and the rule leaves something open that one of them would settle.
    WidthMissing,
    /// Nothing the rule allows meets the width asked for.
    NoFit {
        /// The width asked for.
        wanted: Length,
        /// Whether that is a finished width (false: a flat width).
        finished: bool,
        /// The nearest width that works below, and its number of pleats.
        below: Option<(Length, u32)>,
        /// The nearest width that works above, and its number of pleats.
        above: Option<(Length, u32)>,
    },
    /// Flat and finished width are both given and no take-up the rule allows joins them.
    WidthsContradict {
        /// As ordered.
        flat: Length,
        /// As ordered.
        finished: Length,
        /// Take-up the rule makes, or comes nearest with.
        take_up: Length,
        /// What each pressed crease loses in its turn; nothing where that is not counted.
        turn: Length,
    },
    /// The pleats take more cloth than there is.
    TakesTooMuch {
        /// Flat width there is.
        flat: Length,
        /// Flat width the pleats and spaces take.
        taken: Length,
    },
    /// A fold passes the centre line into the other half.
    FoldCrossesCentre {
        /// The pleat's step.
        step: usize,
        /// By how much.
        amount: Length,
        /// Flat distance of the fold from the centre.
        fold_at: Length,
        /// Take-ups between the centre and the fold, the fold's own pleat included.
        taken_up: Length,
    },
    /// A fold hangs out past the panel's edge.
    FoldOverrunsEdge {
        /// The pleat's step.
        step: usize,
        /// By how much.
        amount: Length,
    },
    /// The panel's side edge lies inside a fold, hidden.
    EdgeInsideFold {
        /// The pleat's step.
        step: usize,
        /// Flat distance of the fold from the edge.
        fold_at: Length,
        /// Take-ups between the edge and the fold, the fold's own pleat included.
        taken_up: Length,
    },
    /// Two pleats need the same flat cloth.
    PleatsRunTogether {
        /// The pleat that comes first.
        first: usize,
        /// The pleat that runs into it.
        second: usize,
        /// Where the first ends, flat, from where the rule starts.
        ends: Length,
        /// Where the second begins, measured alike.
        begins: Length,
    },
    /// More layers lie over one another than the rule intends.
    FoldOnFold {
        /// The pleat whose fold lies deepest.
        step: usize,
        /// How many layers.
        layers: u32,
        /// How many are intended.
        intended: u32,
        /// Where, from the left end of the finished width.
        from: Length,
        /// How far that goes on.
        to: Length,
    },
    /// The rule follows the print across, and the face has none.
    NoPrintAcross,
    /// No length the rule allows brings the same part of the print to the next pleat.
    PrintOutOfReach {
        /// The step that should give way.
        step: usize,
        /// How often its length lies between the middles of two pleats.
        times: i64,
        /// The cloth that lies there besides.
        besides: Length,
        /// The print's period across, as the cloth is made up.
        repeat: Length,
        /// The nearest length below its ideal that does, where there is one.
        below: Option<Length>,
        /// The nearest length above.
        above: Length,
    },
    /// Nothing between a pleat and the one before it can follow the print.
    NothingFollowsPrint {
        /// The pleat's step.
        step: usize,
    },
    /// One cloth says how thick it is and another does not, so no turn of cloth is counted.
    TurnNotCounted {
        /// The layer whose cloth does not say.
        layer: Layer,
    },
    /// Strips of tape behind the folds are longer than the shallowest pleat is deep.
    StripShows {
        /// The shallowest pleat's step.
        step: usize,
        /// Length of the strips.
        length: Length,
        /// Depth of that pleat.
        depth: Length,
    },
    /// More pleats than the limit.
    TooManyPleats {
        /// The step that asks for them.
        step: usize,
        /// The most pleats a panel may have.
        limit: u32,
    },
}
