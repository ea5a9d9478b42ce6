//! Findings in the row, and in what it hangs from.

use pelmet_measure::Length;

/// A cover over a join under this on each side is thin, where no margin is stated.
/// Common practice, no source.
pub const THIN_COVER: Length = Length::INCH;

/// Findings in the row.
#[derive(Clone, PartialEq, Debug)]
pub enum RowMatter {
    /// The panels do not cover the length.
    Uncovered {
        /// By how much.
        amount: Length,
        /// The length to cover.
        to_cover: Length,
        /// What the panels come to together, overlaps taken off.
        covered: Length,
    },
    /// The panels need more than the length.
    Crowded {
        /// By how much.
        amount: Length,
        /// The length to cover.
        to_cover: Length,
        /// What the panels take.
        covered: Length,
    },
    /// Filling panels cannot share what is left within their limits.
    FillOutOfRange {
        /// The panel, by index.
        panel: usize,
        /// The share that is left for each.
        share: Length,
        /// The limit it breaks.
        limit: Length,
        /// What the other panels take, overlaps taken off.
        taken: Length,
        /// The length to cover.
        to_cover: Length,
    },
    /// A filling panel is not in the row, so nothing tells it what to fill.
    FillOutsideRow {
        /// The panel, by index.
        panel: usize,
    },
    /// The row is empty.
    Empty,
    /// A panel is in neither the row nor over the joins.
    NotHung {
        /// The panel, by index.
        panel: usize,
    },
    /// A panel lies over the joins of a row that has none.
    NoJoin {
        /// The panel, by index.
        panel: usize,
    },
    /// A panel over a join does not reach its stated margin on each side.
    JoinNotCovered {
        /// The panel, by index.
        panel: usize,
        /// What it covers on each side.
        covers: Length,
        /// What it should.
        wanted: Length,
        /// Its finished width.
        finished: Length,
    },
    /// A panel covers its join by very little.
    JoinThinlyCovered {
        /// The panel, by index.
        panel: usize,
        /// What it covers on each side.
        covers: Length,
        /// Its finished width.
        finished: Length,
    },
    /// An overlap is wider than a panel it lies on.
    OverlapTooWide {
        /// The panel, by index.
        panel: usize,
        /// Its finished width.
        finished: Length,
        /// How far neighbours lie over one another, as ordered.
        overlap: Length,
    },
    /// The returns and the projection of the rod differ.
    ReturnAndProjectionDiffer {
        /// As ordered.
        returns: Length,
        /// Of the rod or board.
        projection: Length,
    },
    /// The rod sags more than it may between its brackets: an estimate.
    RodSags {
        /// How far it sags.
        sag: Length,
        /// How far it may.
        limit: Length,
        /// From bracket to bracket.
        span: Length,
        /// The widest spacing that stays within the limit.
        spacing: Length,
        /// How many brackets stay within it, where it can be done.
        brackets: Option<u32>,
    },
    /// A panel hangs lower than its opening: longer than the distance from the rod's top to the floor.
    LongerThanHeight {
        /// The panel, by index.
        panel: usize,
        /// How far it hangs down, from the top of the rod.
        drop: Length,
        /// Height of the rod's top.
        height: Length,
    },
}
