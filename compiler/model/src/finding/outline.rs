//! Findings in the outline.

use pelmet_measure::Length;

use crate::closed_set::closed_set;
/// Findings in the outline. `step` is an index into its steps.
#[derive(Clone, PartialEq, Debug)]
pub enum OutlineMatter {
    /// The outline does not begin with `from`, or begins twice.
    NoStart {
        /// The step at fault, where there is one.
        step: Option<usize>,
    },
    /// The outline ends before it reaches the heading line at its full width.
    NotClosed {
        /// Its last step.
        step: usize,
        /// Where it ends, across from its own start edge.
        across: Length,
        /// Where it ends, below the heading line.
        down: Length,
    },
    /// The outline meets the heading line in from the edge, so the heading is not straight and whole.
    HeadingShort {
        /// The step that reaches the heading line.
        step: usize,
        /// By how much.
        amount: Length,
        /// The width it should reach across.
        width: Length,
    },
    /// A point lies outside the panel's width or drop.
    OutsideSize {
        /// The step that ends outside.
        step: usize,
        /// By how much.
        amount: Length,
        /// Which limit it passes.
        beyond: OutlineLimit,
        /// The size it should stay in, in that direction.
        limit: Length,
    },
    /// The lowest point of the outline stays short of the drop.
    ShortOfDrop {
        /// By how much.
        amount: Length,
    },
    /// Two edges cross or touch.
    CrossesItself {
        /// One step.
        first: usize,
        /// The other.
        second: usize,
    },
    /// More corners than the limit.
    TooManyCorners {
        /// The most corners an outline may have.
        limit: u32,
    },
    /// There is no such arc.
    NoArc {
        /// The step that asks for it.
        step: usize,
        /// Why not.
        fault: ArcFault,
    },
    /// A curve is so tight that its allowance runs into itself.
    CurveTooTight {
        /// The step that draws it.
        step: usize,
        /// The radius where it is tightest.
        radius: Length,
        /// The least that leaves room.
        needed: Length,
    },
    /// An edge has no length.
    NoLength {
        /// The step that ends where it begins.
        step: usize,
    },
    /// A notch or neck is too narrow for its seam allowance.
    TooNarrow {
        /// The step whose edge disappears.
        step: usize,
        /// Length of the edge, or width of the neck.
        width: Length,
        /// What the allowance needs there.
        needed: Length,
    },
}

/// Why there is no such arc.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum ArcFault {
    /// The radius does not reach from end to end.
    RadiusTooSmall {
        /// As ordered.
        radius: Length,
        /// Half the distance between its ends.
        least: Length,
    },
    /// The point it is to pass through lies in line with its ends but not between them.
    ThroughInLine,
    /// It is to be level at one end, and the other lies straight above or below.
    StraightUp,
}

closed_set! {
    /// The limits of the ground that an outline is drawn on, by how a point lies that passes them.
    pub enum OutlineLimit {
        /// The lower end of the drop.
        Drop = "below the drop",
        /// The heading line.
        HeadingLine = "above the heading line",
        /// The panel's edge.
        Edge = "past the edge",
        /// The fold about which the outline is mirrored.
        Fold = "across the fold",
    }
}
