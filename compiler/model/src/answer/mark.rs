//! What is marked on the flat, made-up panel.

use pelmet_measure::Length;

use crate::{BandEdge, CornerRelief, End, Toward};

/// Something to mark on the flat, made-up panel.
#[derive(Clone, PartialEq, Debug)]
pub struct Mark {
    /// What is marked.
    pub kind: MarkKind,
    /// From the left edge.
    pub across: Length,
    /// From the centre line: negative to the left.
    pub from_centre: Length,
    /// From the made-up top edge, where the mark has a height.
    pub down: Option<Length>,
}

/// What is done along a line of the heading.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum HeadingWork {
    /// The raw edge is folded under.
    TurnUnder,
    /// The pocket is stitched below its frill.
    UpperStitching,
    /// The pocket is stitched below the rod.
    LowerStitching,
    /// The upper edge of the fastener's mate, on the back of the panel.
    FastenerMate,
}

/// What is marked.
#[derive(Clone, PartialEq, Debug)]
pub enum MarkKind {
    /// The heading line, all across: where the cloth lies on the top of the rod, on the front edge
    /// of the board, or is folded back to make a pocket.
    HeadingLine,
    /// Another line of the heading, all across.
    HeadingWork(HeadingWork),
    /// A corner of the outline, by number from 1, with its snip or trim.
    Corner {
        /// Its number.
        number: usize,
        /// What the allowance calls for.
        relief: CornerRelief,
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
        /// "knife", "box", "double box", "inverted", "kick" or "tuck".
        kind: &'static str,
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
        /// "tuck", "pinch", "goblet" or "cartridge".
        kind: &'static str,
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
        /// "gathers" or "pencil".
        kind: &'static str,
        /// The finished width the run is drawn up to.
        drawn_to: Length,
    },
    /// A quarter mark of a gathered run.
    Quarter,
    /// The centre of a motif.
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
