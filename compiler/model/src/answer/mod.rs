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

pub use band::{BandMade, BandSeam};
pub use folded_outline::{Elevation, FoldedLayer, FoldedOutline, LiningSeen};
pub use folding::{Folding, LayerRun, Lies, Stretch};
pub use mark::{HeadingWork, Mark, MarkKind, Marked};
pub use mitre::{Mitre, MitrePlace, MitrePoint};
pub use needs::{Extent, FastenerRun, Need, NotionKind, PleatStrips, TapeRun};
pub use panel::PanelMade;
pub use piece::{JoinedWidths, Piece, Seam, Strip};
pub use pleating::{Crease, CreaseKind, Drawn, Fold, Held, Pleat, Pleating, Toward};
pub use rod_check::{RodCheck, RodUnknown};
pub use steps::{CountedThing, FigureValue, PartMade, SentenceMade, StepMade};
pub use window::{WindowMade, Work};
