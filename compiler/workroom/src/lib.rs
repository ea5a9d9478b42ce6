//! The sums of the workroom: folding, pleats, outlines, headings, rows, pieces and notions.
//!
//! This crate speaks of cloth and never of text. A [`Job`] is what the maker ordered; [`work`]
//! answers with what must be cut, marked and folded, and with every [`Finding`] on the way. Who
//! wrote which number where is known one floor up, in the design crate.
//!
//! Coordinates of a panel are those of its made-up flat state, lying face up with the heading
//! away from the maker: `across` runs from the left edge to the right, `down` from the made-up
//! top edge towards the lower edge.

mod allowance;
mod allowance_edge;
mod band;
mod beam;
mod clips;
mod crossing;
mod curve;
mod elevation;
mod fabric;
mod figure;
mod figure_value;
mod finding;
mod finding_making;
mod folded_outline;
mod folding;
mod geometry;
mod heading;
mod heading_made;
mod hiding;
mod joined;
mod made;
mod making;
mod making_notions;
mod making_step;
mod marks;
mod material;
mod mitre;
mod needs;
mod notion;
mod notions;
mod order;
mod outline;
mod outline_drawn;
mod pieces;
mod pleat_rule;
mod pleating;
mod ranged;
mod returns;
mod rod_check;
mod row;
mod row_fill;
mod scallops;
mod self_lined;
mod shape;
mod shape_drawn;
mod steps_made;
mod support;
mod turn_of_cloth;
mod weight;
mod width;
mod work;
mod work_layers;
mod work_panel;
mod work_pieces;

pub use allowance::LONGEST_POINT;
pub use band::{BandEdge, BandMade, BandOrder, BandSeam};
pub use beam::{Section, Span};
pub use clips::CLIP_SPACING;
pub use curve::FLATTENING;
pub use elevation::{Elevation, LiningSeen};
pub use fabric::{Fabric, Flaw, MAXIMUM_FLAWS, Match, Price, Railroad, Repeat, Way};
pub use figure::{Each, EdgePart, Figure};
pub use figure_value::FigureValue;
pub use finding::{
    ArcFault, Finding, Matter, OutlineMatter, PieceMatter, PleatMatter, RowMatter, Subject,
};
pub use finding_making::MakingMatter;
pub use folded_outline::{FoldedLayer, FoldedOutline, fold_outline};
pub use folding::{fold, fold_pleating, is_hidden};
pub use heading::{FastenerOrder, Heading};
pub use joined::{LEAST_PART, MAXIMUM_WIDTHS, strips_needed};
pub use made::{
    Corner, CornerRelief, Crease, Curve, Drawn, Edge, EdgeKind, FastenerRun, Fold, Folding,
    HeadingWork, Held, JoinedWidths, Layer, LayerRun, Lies, Mark, MarkKind, PanelMade, Piece,
    Pleat, Pleating, Point, Seam, Shape, Stretch, Strip, TapeRun, Toward, WindowMade, Work,
};
pub use making::{Allowance, EdgeAllowances, LayerMaking, Making, TapeOrder};
pub use making_notions::{
    CountedOrder, HowMany, MakingNotions, StripOrder, ThreadOrder, WorkPer, WorkStep,
};
pub use making_step::{CautionKind, MakingStep, Part, Said, Sentence};
pub use material::{MATERIALS, Material};
pub use mitre::{Mitre, MitrePlace, MitrePoint};
pub use needs::{Extent, Need, NeedKind, PleatStrips};
pub use notion::{FUSIBLE_TAPE, Notion, NotionPrice, NotionWeight};
pub use order::{Cut, FinishedOrder, Job, Motif, PanelOrder, WidthOrder, WindowOrder};
pub use outline::{ArcOrder, Outline, OutlineStep, Proportion, ScallopNumber};
pub use outline_drawn::{MAXIMUM_CORNERS, MAXIMUM_CURVE_POINTS};
pub use pleat_rule::{
    FoldPlace, Follow, PleatKind, PleatOrder, PleatRule, PleatStep, Start, StepKind, StitchedShape,
    TowardOrder,
};
pub use pleating::{MAXIMUM_PLEATS, ROUNDING, check, lay_out, no_pleats, tolerance};
pub use ranged::Ranged;
pub use returns::End;
pub use rod_check::{
    GRAVITY, MOST_BRACKETS, RodCheck, RodUnknown, SAG_LIMIT, USUAL_BRACKETS, check_rod,
};
pub use row::THIN_COVER;
pub use shape::LEAST_TURN;
pub use steps_made::{PartMade, SentenceMade, StepMade};
pub use support::{Board, Rod, Support};
pub use turn_of_cloth::turn_of_cloth;
pub use width::fullness_of;
pub use work::work;
