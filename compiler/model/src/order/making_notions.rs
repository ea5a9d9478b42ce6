//! What a making method takes beside cloth and the tape along its edges, and the work it makes.

use pelmet_measure::{Length, Ratio};

/// The notions a making method names.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct MakingNotions {
    /// Strips of the method's tape behind the folds of the pleats.
    pub pleat_strips: Option<StripOrder>,
    /// Thread for its seams.
    pub thread: Option<ThreadOrder>,
    /// Rings along the heading.
    pub rings: Option<CountedOrder>,
    /// Weights along the lower edge.
    pub weights: Option<CountedOrder>,
}

/// Strips of tape that hold a pleat from behind. They must stay hidden.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub struct StripOrder {
    /// How many behind each fold.
    pub behind_each: u32,
    /// How long each is; `None` for as long as the shallowest pleat is deep.
    pub length: Option<Length>,
}

/// Thread, reckoned from what is sewn.
#[derive(Clone, PartialEq, Debug)]
pub struct ThreadOrder {
    /// The notion, by name.
    pub name: String,
    /// How many times the sewn length it takes.
    pub times: Ratio,
}

/// Things that are counted along an edge.
#[derive(Clone, PartialEq, Debug)]
pub struct CountedOrder {
    /// The notion, by name.
    pub name: String,
    /// A number, or how far apart along the edge.
    pub how_many: HowMany,
}

/// How many things a panel has along an edge.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum HowMany {
    /// So many on each panel.
    Each(u32),
    /// No further apart than that, one at each end.
    Apart(Length),
}

/// A step of the work on one panel.
#[derive(Clone, PartialEq, Debug)]
pub struct WorkStep {
    /// What is done ("cutting").
    pub name: String,
    /// How many minutes it takes.
    pub minutes: Ratio,
    /// For what.
    pub per: WorkPer,
}

/// What a step of the work is reckoned by.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum WorkPer {
    /// Once for every panel that is made.
    Panel,
    /// Once for every pleat of every panel.
    Pleat,
}
