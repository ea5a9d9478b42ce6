//! What is marked on the flat, made-up panel.

use pelmet_measure::Length;

use crate::closed_set::closed_set;
use crate::{BandEdge, End, PleatKind, Relief, Toward};

/// Something to mark on the flat, made-up panel.
#[derive(Clone, PartialEq, Debug)]
pub struct MarkMade {
    /// What is marked.
    pub what: Marked,
    /// From the left edge.
    pub across: Length,
    /// From the centre line: negative to the left.
    pub from_centre: Length,
    /// From the made-up top edge, where the mark has a height.
    pub down: Option<Length>,
}

closed_set! {
    /// What is done along a line of the heading.
    pub enum HeadingWork {
        /// The raw edge is folded under.
        TurnUnder = "fold the raw edge under",
        /// The pocket is stitched below its frill.
        UpperStitching = "stitch above the pocket",
        /// The pocket is stitched below the rod.
        LowerStitching = "stitch below the pocket",
        /// The upper edge of the fastener's mate, on the back of the panel.
        FastenerMate = "top of its mate, on the back",
    }
}

/// What is marked.
#[derive(Clone, PartialEq, Debug)]
pub enum Marked {
    /// The heading line, all across: where the cloth lies on the top of the rod, on the front edge
    /// of the board, or is folded back to make a pocket.
    HeadingLine,
    /// Another line of the heading, all across.
    HeadingWork(HeadingWork),
    /// A corner of the outline, by number from 1, with its snip or trim.
    Corner {
        /// Counted from 1, from the left end of the top edge down the left side.
        number: usize,
        /// What the allowance calls for.
        relief: Option<Relief>,
        /// The name the maker gave it.
        name: Option<String>,
    },
    /// A curved edge, marked at its middle.
    Curve {
        /// Number of the corner it starts at.
        from: usize,
        /// Number of the corner it ends at.
        to: usize,
        /// Slits to clip in its allowance.
        clips: u32,
        /// Wedges to cut out of its allowance.
        wedges: u32,
    },
    /// An end of the turning opening.
    TurningOpening,
    /// A visible fold of a pleat.
    Fold {
        /// The pleat's number from the left, from 1.
        pleat: usize,
        /// The pleat's kind.
        kind: PleatKind,
        /// Depth of the fold.
        depth: Length,
        /// Flat position of the line it is brought to, from the left edge.
        brought_to: Length,
        /// The same from the centre line.
        brought_to_from_centre: Length,
        /// The way it points.
        toward: Toward,
    },
    /// A point that is brought to another and stitched there.
    Pair {
        /// The pleat's number from the left, from 1.
        pleat: usize,
        /// The pleat's kind.
        kind: PleatKind,
        /// Depth of one finger, or of the sewn fold before it is shaped.
        depth: Length,
        /// How far from each other the two points stay.
        leaves: Length,
        /// Flat position of the other point, from the left edge.
        other: Length,
        /// The same from the centre line.
        other_from_centre: Length,
    },
    /// Where a finger of a stitched pleat is folded.
    Finger {
        /// The pleat's number from the left, from 1.
        pleat: usize,
    },
    /// An end of a run that is gathered.
    GatherEnd {
        /// The pleat's number from the left, from 1.
        pleat: usize,
        /// The pleat's kind.
        kind: PleatKind,
        /// The finished width the run is drawn up to.
        drawn_to: Length,
    },
    /// A quarter mark of a gathered run.
    Quarter,
    /// Where the middle of a motif comes to lie.
    MotifCentre,
    /// The upper edge of a fastener, all across.
    FastenerLine {
        /// What is fastened there.
        name: String,
    },
    /// The line on which the face is folded up behind itself, all across.
    LowerFold,
    /// A corner of the line along which a band is sewn to the face.
    BandSeam {
        /// Which band.
        edge: BandEdge,
    },
    /// A seam between joined widths.
    JoinSeam,
    /// Where the panel at this end of the row turns back to the wall.
    Return(End),
}

closed_set! {
    /// The kinds of mark.
    pub enum MarkKind {
        /// The heading line, all across.
        HeadingLine = "heading line",
        /// Another line of the heading, all across: folded under, stitched, or the mate of a fastener.
        HeadingWork = "line of the heading",
        /// A corner of the outline.
        Corner = "corner",
        /// A curved edge of the outline, at its middle.
        Curve = "curve",
        /// An end of the turning opening.
        TurningOpening = "turning opening",
        /// A visible fold of a pleat.
        Fold = "fold",
        /// A point that is brought to another and stitched there.
        Pair = "pair",
        /// Where a finger of a stitched pleat is folded.
        Finger = "finger",
        /// An end of a run that is gathered.
        GatherEnd = "an end",
        /// A quarter of a gathered run.
        Quarter = "quarter",
        /// The centre of a motif.
        MotifCentre = "motif centre",
        /// The upper edge of a fastener, all across.
        FastenerLine = "top",
        /// The line on which the face is folded up behind itself, all across.
        LowerFold = "fold, the lining comes up behind",
        /// A corner of the line along which a band is sewn to the face.
        BandSeam = "seam of the band",
        /// A seam between joined widths.
        JoinSeam = "join seam",
        /// Where an end panel of the row turns back to the wall.
        Return = "return",
    }
}

impl Marked {
    /// Its kind.
    #[must_use]
    pub const fn kind(&self) -> MarkKind {
        match self {
            Self::HeadingLine => MarkKind::HeadingLine,
            Self::HeadingWork(_) => MarkKind::HeadingWork,
            Self::Corner { .. } => MarkKind::Corner,
            Self::Curve { .. } => MarkKind::Curve,
            Self::TurningOpening => MarkKind::TurningOpening,
            Self::Fold { .. } => MarkKind::Fold,
            Self::Pair { .. } => MarkKind::Pair,
            Self::Finger { .. } => MarkKind::Finger,
            Self::GatherEnd { .. } => MarkKind::GatherEnd,
            Self::Quarter => MarkKind::Quarter,
            Self::MotifCentre => MarkKind::MotifCentre,
            Self::FastenerLine { .. } => MarkKind::FastenerLine,
            Self::LowerFold => MarkKind::LowerFold,
            Self::BandSeam { .. } => MarkKind::BandSeam,
            Self::JoinSeam => MarkKind::JoinSeam,
            Self::Return(_) => MarkKind::Return,
        }
    }
}

impl MarkKind {
    /// Whether it is a line all across the panel, with no place from left to right.
    #[must_use]
    pub const fn runs_across(self) -> bool {
        match self {
            Self::HeadingLine | Self::HeadingWork | Self::FastenerLine | Self::LowerFold => true,
            Self::Corner
            | Self::Curve
            | Self::TurningOpening
            | Self::Fold
            | Self::Pair
            | Self::Finger
            | Self::GatherEnd
            | Self::Quarter
            | Self::MotifCentre
            | Self::BandSeam
            | Self::JoinSeam
            | Self::Return => false,
        }
    }
}
