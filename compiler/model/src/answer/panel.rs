//! One panel worked out.

use pelmet_measure::{Length, Mass};

use crate::{
    BandMade, FastenerRun, FoldedOutline, Folding, MarkMade, MitreMade, Need, PieceMade, Pleating,
    Shape, StepMade, StripsMade, TapeMade,
};

/// One panel worked out.
#[derive(Clone, PartialEq, Debug)]
pub struct PanelMade {
    /// How many are made.
    pub quantity: u32,
    /// Width as it hangs, pleats laid, by the sum of the rule.
    pub finished: Length,
    /// Made-up width before pleating.
    pub flat: Length,
    /// Made-up length, heading included.
    pub made_length: Length,
    /// Depth of the heading: made length less drop. A point so far below the made-up top edge,
    /// and any length more, hangs that length below the top of the rod or board.
    pub heading_depth: Length,
    /// The pleats and creases.
    pub pleating: Pleating,
    /// The strip folded.
    pub folding: Folding,
    /// The made-up outline, sewn line by sewn line, in flat coordinates.
    pub shape: Shape,
    /// That outline with the pleats laid; `None` where creases alone do not make the finished
    /// width, as in a gathered panel.
    pub folded: Option<FoldedOutline>,
    /// How thick its thickest stack is, pressed; `None` where a cloth does not say how thick it is,
    /// and where it is not folded but gathered.
    pub thickest_stack: Option<Length>,
    /// The corners at which its hems are mitred.
    pub mitres: Vec<MitreMade>,
    /// The bands along its edges.
    pub bands: Vec<BandMade>,
    /// What is cut: the face first, then what lies behind it.
    pub pieces: Vec<PieceMade>,
    /// Fusible tape, run by run, for one panel.
    pub tape: Vec<TapeMade>,
    /// Fasteners for one panel.
    pub fasteners: Vec<FastenerRun>,
    /// Everything to be marked on the flat panel, in working order.
    pub marks: Vec<MarkMade>,
    /// By how much the finished width may be out from folding, worst case and likely, where the
    /// rule states a folding error: 2en and 2e*sqrt(n) for n pleats.
    pub tolerance: Option<(Length, Length)>,
    /// Strips of tape behind its folds.
    pub pleat_strips: Option<StripsMade>,
    /// Everything one panel needs beside cloth.
    pub needs: Vec<Need>,
    /// What one panel weighs, where every cloth of it states its weight; notions add what they state.
    pub weight: Option<Mass>,
    /// The steps of its making method that apply to it.
    pub steps: Vec<StepMade>,
}
