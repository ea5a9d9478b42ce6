//! What is cut.

use pelmet_measure::{Area, Length};

use crate::{Allowance, EdgeKind, Layer, Point, Shape};

/// One cut piece.
#[derive(Clone, PartialEq, Debug)]
pub struct PieceMade {
    /// Which layer of the panel it is.
    pub layer: Layer,
    /// The cloth, by index in the job.
    pub fabric: usize,
    /// How many are cut, for all the panels of this kind in the window.
    pub quantity: u32,
    /// Whether it is cut on the fold; sizes are then still those of the whole piece.
    pub on_fold: bool,
    /// Whether it is the panel's outline turned over: a lining whose two halves are not alike, which
    /// is sewn to the face right sides together.
    pub mirrored: bool,
    /// Whether it lies along the cloth instead of up it: its width runs with the bolt's length.
    pub railroaded: bool,
    /// Cut width: flat width plus allowances, and shrinkage.
    pub cut_width: Length,
    /// Cut length: made length plus allowances, and shrinkage.
    pub cut_length: Length,
    /// The cut outline, in flat coordinates of the panel (so the top left corner is negative by
    /// the allowances). Shrinkage is in the sizes, not in this outline.
    pub outline: Shape,
    /// The sewn line inside it: of a hemmed edge, the finished edge. In the same coordinates.
    pub sewn: Shape,
    /// Area inside the cut outline.
    pub area: Area,
    /// Allowance at the top, the sides and the lower edge, extra length and width included.
    pub allowances: Vec<(EdgeKind, Allowance, Length)>,
    /// How it is joined from several widths; `None` for a piece cut in one.
    pub joined: Option<WidthsMade>,
    /// How far below its top edge it is folded, where its back half lines the panel.
    pub fold: Option<Length>,
    /// The point whose place in the print is held, from the top left corner of the cut piece;
    /// `across` is held only where a motif is placed.
    pub print_point: Point,
    /// Whether `print_point.across` matters.
    pub print_held_across: bool,
    /// Whether that point is the centre of a motif.
    pub carries_motif: bool,
}

/// A piece made of several widths of cloth: whole widths in the middle, part widths outside.
#[derive(Clone, PartialEq, Debug)]
pub struct WidthsMade {
    /// The strips, left to right.
    pub strips: Vec<Strip>,
    /// The seams between them.
    pub seams: Vec<Seam>,
    /// Seam allowance on each side of a join.
    pub allowance: Length,
}

/// One strip of a joined piece.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub struct Strip {
    /// Its cut width, allowances included.
    pub cut_width: Length,
    /// How far from its left edge a point lies that must sit on a line of the print across, so that
    /// the print meets at the seams; less than one repeat. `None` where nothing is held across.
    pub print_across: Option<Length>,
    /// Whether that point is an odd number of repeats from the one held in the panel, so that a
    /// half-drop print stands half a repeat lower there.
    pub half_dropped: bool,
}

/// A seam between two strips.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub struct Seam {
    /// Flat position of the sewn line, from the panel's left edge.
    pub at: Length,
    /// Whether it lies on a stretch that a pleat hides.
    pub hidden: bool,
}
