//! What the sums answer: every panel with its sizes, folds, pieces and marks.

mod band;
mod folded_outline;
mod folding;
mod mark;
mod mitre;
mod needs;
mod panel;
mod piece;
mod pleating;
mod rod_check;
mod steps;
mod window;

pub use band::{BandMade, BandSeamMade};
pub use folded_outline::{Elevation, FoldedOutline, LayerFolded, LiningShown};
pub use folding::{Folding, LayerRun, Lies, StretchMade};
pub use mark::{HeadingWork, MarkKind, MarkMade, Marked};
pub use mitre::{MitreMade, MitrePlace, MitrePointMade};
pub use needs::{FastenerRun, Need, NeedExtent, NotionKind, StripsMade, TapeMade};
pub use panel::PanelMade;
pub use piece::{PieceMade, Seam, Strip, WidthsMade};
pub use pleating::{CreaseKind, CreaseMade, Drawn, FoldMade, Held, PleatMade, Pleating, Toward};
pub use rod_check::{RodChecked, RodUnknown};
pub use steps::{CountedThing, FigureValue, PartMade, SentenceMade, StepMade};
pub use window::{WindowMade, Work};
