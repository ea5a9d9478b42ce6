//! What is ordered: a job with its windows, panels, cloths, notions and making methods.

mod fabric;
mod figure;
mod heading;
mod job;
mod making;
mod making_notions;
mod material;
mod notion;
mod outline;
mod pleat_kind;
mod pleats;
mod ranged;
mod steps;
mod support;

pub use fabric::{Fabric, FlawOrder, MAXIMUM_FLAWS, Match, PriceOrder, Railroad, Repeat, Way};
pub use figure::{Each, EdgePart, Figure};
pub use heading::{FastenerOrder, Heading};
pub use job::{Cut, FinishedOrder, Job, Motif, PanelOrder, WidthOrder, WindowOrder};
pub use making::{Allowance, BandOrder, EdgeAllowances, LayerMaking, Making, TapeOrder};
pub use making_notions::{
    CountedOrder, HowMany, MakingNotions, StripOrder, ThreadOrder, WorkPer, WorkStep,
};
pub use material::{MATERIALS, Material};
pub use notion::{FUSIBLE_TAPE, NotionOrder, NotionPrice, NotionWeight};
pub use outline::{ArcOrder, Outline, OutlineStep, Proportion, ScallopNumber};
pub use pleat_kind::{
    CreasePattern, PatternCrease, PatternFace, PatternLength, PleatKind, PleatMake,
};
pub use pleats::{
    DrawnOrder, FoldPlace, Follow, MAXIMUM_PLEATS, PleatOrder, PleatRule, PleatStep, Start,
    StepKind, TowardOrder,
};
pub use ranged::Ranged;
pub use steps::{CautionKind, MakingStep, Said, Sentence, SentencePart};
pub use support::{Board, Rod, SupportKind, SupportOrder};
