//! The packet: everything a job emits, as one value, with its JSON Schema.
//!
//! It holds what to buy, cut, mark, fold and check, each amount as a number for programs beside the
//! text that people read. It knows nothing of how it came about: the driver puts it together, and
//! every sheet is a view of it, so that no two of them can disagree.

mod amounts;
mod band;
mod cloth;
mod comparison;
mod folded;
mod mark;
mod mitre;
mod notion;
mod order_step;
mod packet;
mod panel;
mod piece;
mod pleat;
mod quote;
mod remark;
mod rod_check;
mod schema;
mod window;

pub use amounts::{Amount, Measure, Place, Run, Size, Surface, Times, Weight};
pub use band::{BandSeam, EdgeBand};
pub use cloth::{
    Band, BoltUsed, Cloth, Flaw, Fold, PiecesAlong, PlacedCorner, PlacedPiece, Price, PrintRepeat,
    Section, WayCompared,
};
pub use comparison::{ClothCompared, ClothComparison, ClothTaken, ClothTrial};
pub use folded::{FoldedEdge, FoldedLayer, FoldedPanel, LiningSeen};
pub use mark::{FoldMark, GatherMark, Mark, StitchMark};
pub use mitre::{Mitre, MitrePoint};
pub use notion::{Extent, Notion, NotionPart, PleatStrips};
pub use order_step::{OrderStep, WorkTime};
pub use packet::{FORMAT, Packet, SystemOfUnits, Units};
pub use panel::{
    CurvedEdge, Fastener, HangRange, Panel, PrintFollowed, SewnCorner, TapeRun, Tolerance,
};
pub use pelmet_model::{
    BandEdge, CreaseKind, EdgeKind, LayerKind, MarkKind, Match, MitrePlace, NotionKind, PleatKind,
    Relief, SupportKind, Toward, Way,
};
pub use piece::{Arc, CutAllowance, JoinSeam, JoinedWidths, MeasuredFrom, OutlinePoint, Piece};
pub use pleat::{Crease, Layers, Pleat, Seen, Stretch, TurnOfCloth};
pub use quote::{Markup, Quote, QuoteKind, QuoteLine, Reckoned};
pub use remark::{Caution, ExpectationMet, Note, SheetKind, Warning};
pub use rod_check::{Bending, Load, RodCheck, Stiffness};
pub use schema::{schema, schema_of};
pub use window::{Row, RowPanel, Support, Window};
