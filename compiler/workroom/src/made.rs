//! What the sums answer: every panel with its sizes, folds, pieces and marks.

use pelmet_measure::{Area, Length, Mass};

use crate::geometry::Span;
use crate::{
    Allowance, BandEdge, BandMade, End, FoldedOutline, Mitre, Need, PleatStrips, RodCheck,
    RodUnknown, StepMade,
};

/// The answer for a whole job; windows in the order of the job.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Work {
    /// One for each window of the job.
    pub windows: Vec<WindowMade>,
}

/// One window worked out.
#[derive(Clone, PartialEq, Debug)]
pub struct WindowMade {
    /// One for each panel of the order, in its order; `None` where a mistake stopped the sums.
    pub panels: Vec<Option<PanelMade>>,
    /// The length the row must cover: rod or board and returns.
    pub to_cover: Length,
    /// The length the row covers: finished widths less overlaps.
    pub covered: Length,
    /// Finished position of each join of the row, measured from the row's left end.
    pub joins: Vec<Length>,
    /// What all its panels weigh, where every cloth of them states its weight.
    pub weight: Option<Mass>,
    /// What its rod makes of that weight, or why nothing can be said of it; `None` for a board.
    pub rod_check: Option<Result<RodCheck, RodUnknown>>,
}

/// One panel worked out.
#[derive(Clone, PartialEq, Debug)]
pub struct PanelMade {
    /// How many are made.
    pub quantity: u32,
    /// Width as it hangs, pleats laid, by the sum of the rule.
    pub finished: Length,
    /// Made-up width before pleating.
    pub flat: Length,
    /// Made-up length, heading included.
    pub made_length: Length,
    /// Depth of the heading: made length less drop. A point so far below the made-up top edge,
    /// and any length more, hangs that length below the top of the rod or board.
    pub heading_depth: Length,
    /// The pleats and creases.
    pub pleating: Pleating,
    /// The strip folded.
    pub folding: Folding,
    /// The made-up outline, sewn line by sewn line, in flat coordinates.
    pub shape: Shape,
    /// That outline with the pleats laid; `None` where creases alone do not make the finished
    /// width, as in a gathered panel.
    pub folded: Option<FoldedOutline>,
    /// How thick its thickest stack is, pressed; `None` where a cloth does not say how thick it is,
    /// and where it is not folded but gathered.
    pub thickest_stack: Option<Length>,
    /// The corners at which its hems are mitred.
    pub mitres: Vec<Mitre>,
    /// The bands along its edges.
    pub bands: Vec<BandMade>,
    /// What is cut: the face first, then what lies behind it.
    pub pieces: Vec<Piece>,
    /// Fusible tape, run by run, for one panel.
    pub tape: Vec<TapeRun>,
    /// Fasteners for one panel.
    pub fasteners: Vec<FastenerRun>,
    /// Everything to be marked on the flat panel, in working order.
    pub marks: Vec<Mark>,
    /// By how much the finished width may be out from folding, worst case and likely, where the
    /// rule states a folding error: 2en and 2e*sqrt(n) for n pleats.
    pub tolerance: Option<(Length, Length)>,
    /// Strips of tape behind its folds.
    pub pleat_strips: Option<PleatStrips>,
    /// Everything one panel needs beside cloth.
    pub needs: Vec<Need>,
    /// What one panel weighs, where every cloth of it states its weight; notions add what they state.
    pub weight: Option<Mass>,
    /// The steps of its making method that apply to it.
    pub steps: Vec<StepMade>,
}

/// A point of the flat panel.
#[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub struct Point {
    /// From the left edge.
    pub across: Length,
    /// From the made-up top edge.
    pub down: Length,
}

/// A closed outline: edge `i` runs from corner `i` to the next.
///
/// The first corner is the left end of the top edge; corners follow down the left side, along the
/// lower edge, up the right side and back along the top.
#[derive(Clone, PartialEq, Debug)]
pub struct Shape {
    /// The corners in order.
    pub corners: Vec<Corner>,
    /// One edge for each corner, starting at it.
    pub edges: Vec<Edge>,
}

/// A corner of an outline.
#[derive(Clone, PartialEq, Debug)]
pub struct Corner {
    /// Where it is.
    pub at: Point,
    /// What its seam allowance calls for once sewn.
    pub relief: CornerRelief,
    /// The outline step that drew it, where one did.
    pub step: Option<usize>,
    /// The name the maker gave it.
    pub name: Option<String>,
}

impl Corner {
    /// A corner of a piece: nothing is said of it but where it is.
    pub(crate) fn plain(at: Point) -> Self {
        Self {
            at,
            relief: CornerRelief::Nothing,
            step: None,
            name: None,
        }
    }
}

/// What the allowance at a corner calls for.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum CornerRelief {
    /// A concave turn: snip to the corner so that it opens.
    Snip,
    /// A convex turn: trim the corner so that it turns sharp.
    Trim,
    /// A corner where two hems meet in a mitre.
    Mitre,
    /// No turn worth the name.
    Nothing,
}

/// An edge of an outline.
#[derive(Clone, PartialEq, Debug)]
pub struct Edge {
    /// Which edge of the panel it belongs to.
    pub kind: EdgeKind,
    /// Its length, along the curve where it is one, to the nearest nanometre.
    pub length: Length,
    /// The outline step that drew it, where one did.
    pub step: Option<usize>,
    /// How it curves; `None` for a straight edge.
    pub curve: Option<Curve>,
}

/// How an edge curves.
#[derive(Clone, PartialEq, Debug)]
pub struct Curve {
    /// The points between its corners; straight lines between them stay within
    /// [`crate::FLATTENING`] of the curve.
    pub between: Vec<Point>,
    /// Slits to clip in the allowance where the edge is concave, so that it opens.
    pub clips: u32,
    /// Wedges to cut out of the allowance where the edge is convex, so that it lies flat.
    pub wedges: u32,
    /// The way it leaves its first corner.
    pub(crate) leaves: Span,
    /// The way it comes to its second.
    pub(crate) arrives: Span,
}

/// The kinds of edge; each has its own allowance.
#[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub enum EdgeKind {
    /// The made-up top edge.
    Top,
    /// A side, straight up and down at the panel's full width.
    Side,
    /// All the rest.
    Lower,
    /// Where a band is sewn to the face, or to another band.
    Band,
}

impl EdgeKind {
    /// Every kind.
    pub const ALL: [Self; 4] = [Self::Top, Self::Side, Self::Lower, Self::Band];
}

/// The pleats of a panel on its flat strip.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Pleating {
    /// Flat width.
    pub flat: Length,
    /// Finished width: flat less take-ups and what is lost in turns.
    pub finished: Length,
    /// From the left edge to the right.
    pub pleats: Vec<Pleat>,
    /// Every crease from left to right; none for a panel that hangs flat.
    pub creases: Vec<Crease>,
    /// Every run of cloth that a pleat draws up, from left to right.
    pub drawn: Vec<Drawn>,
}

/// A run of the flat strip that stands out from the panel once a pleat is stitched or gathered.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub struct Drawn {
    /// Its left end.
    pub from: Length,
    /// Its right end.
    pub to: Length,
    /// The finished width it keeps.
    pub keeps: Length,
    /// Whether it stands between the fingers of a pleat, where it is not seen.
    pub between_fingers: bool,
}

/// One pleat laid out on the flat strip.
#[derive(Clone, PartialEq, Debug)]
pub struct Pleat {
    /// The written step that ordered it.
    pub step: usize,
    /// Whether it belongs to the mirrored half.
    pub mirrored: bool,
    /// "knife", "box", "double box", "inverted", "kick", "tuck", "pinch", "goblet", "cartridge",
    /// "gathers" or "pencil".
    pub kind: &'static str,
    /// How its two ends are held, where stitching or a thread holds them.
    pub held: Held,
    /// Depth of one fold.
    pub depth: Length,
    /// Width of the face, for a pleat that has one; what a stitched pleat leaves between its points,
    /// and gathers once drawn up.
    pub face: Option<Length>,
    /// Flat width taken up by its folds; what they lose in turns comes on top.
    pub take_up: Length,
    /// What each of its creases loses of the flat width in its turn.
    pub turn: Length,
    /// Left end of the flat cloth the pleat uses.
    pub from: Length,
    /// Right end of the flat cloth the pleat uses.
    pub to: Length,
    /// Its visible folds, left to right.
    pub folds: Vec<Fold>,
    /// Where the fingers of a pinch pleat are folded, left to right on the flat strip.
    pub fingers: Vec<Length>,
}

/// How the two ends of a pleat are held.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum Held {
    /// By nothing but the pressing.
    Pressed,
    /// Brought together and stitched.
    Stitched,
    /// Drawn toward each other along a thread or a tape.
    Drawn,
}

/// A visible fold: a crease that is brought to a line and laid there.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub struct Fold {
    /// Flat position of the crease.
    pub crease: Length,
    /// Flat position of the line it is brought to.
    pub brought_to: Length,
    /// Where the fold lies once pleated, measured from the left end of the finished width.
    pub finished: Length,
    /// The way it points as the panel hangs.
    pub toward: Toward,
}

/// A direction as the panel hangs.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum Toward {
    /// To the left.
    Left,
    /// To the right.
    Right,
}

/// A crease across the flat strip.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub struct Crease {
    /// Flat position.
    pub at: Length,
    /// A mountain (ridge toward the viewer) or, where false, a valley.
    pub mountain: bool,
    /// The pleat it belongs to, by index in [`Pleating::pleats`].
    pub pleat: usize,
}

/// A strip of cloth folded at its creases. Finished positions are measured from the left end of
/// the strip: that end lies at 0.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Folding {
    /// Finished position of the right end: the finished width.
    pub finished: Length,
    /// The leftmost finished position any cloth reaches.
    pub leftmost: Length,
    /// The rightmost finished position any cloth reaches.
    pub rightmost: Length,
    /// The plain stretches between creases, left to right on the flat strip.
    pub stretches: Vec<Stretch>,
    /// How many layers lie at each finished position, left to right without gaps.
    pub layers: Vec<LayerRun>,
    /// The most layers anywhere.
    pub thickest: u32,
}

/// A plain stretch of the strip between two creases.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub struct Stretch {
    /// Its left end on the flat strip.
    pub flat_from: Length,
    /// Its right end on the flat strip.
    pub flat_to: Length,
    /// How much of its left end is lost in the turn of the crease there: half of that turn.
    pub turn_from: Length,
    /// The same at its right end.
    pub turn_to: Length,
    /// Finished position of its left end.
    pub finished_from: Length,
    /// Finished position of its right end; to the left of the other where turned over, and nearer
    /// than the flat cloth is wide where it is drawn up.
    pub finished_to: Length,
    /// How its cloth is held.
    pub lies: Lies,
    /// Whether its face shows (false: turned over).
    pub face_up: bool,
    /// Its place in the stack, 0 at the back.
    pub height: usize,
}

/// How the cloth of a stretch is held.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum Lies {
    /// Flat.
    Flat,
    /// Drawn up, standing out from the panel.
    Drawn,
    /// The same, between the fingers of a pleat, where it is not seen.
    BetweenFingers,
}

/// A run of finished positions with the same layers over it.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub struct LayerRun {
    /// Left end.
    pub from: Length,
    /// Right end.
    pub to: Length,
    /// How many layers.
    pub layers: u32,
    /// The stretch on top, the one that is seen, by index in [`Folding::stretches`].
    pub top: usize,
}

/// A layer of a panel.
#[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub enum Layer {
    /// The cloth that is seen.
    Face,
    /// The soft cloth between face and lining.
    Interlining,
    /// The cloth behind.
    Lining,
    /// A band along an edge.
    Band(BandEdge),
}

impl Layer {
    /// Every layer that covers the whole panel, from the front to the back.
    pub const ALL: [Self; 3] = [Self::Face, Self::Interlining, Self::Lining];

    /// The word for it, which is also the property that names its cloth.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Self::Face => "face",
            Self::Interlining => "interlining",
            Self::Lining => "lining",
            Self::Band(_) => "band",
        }
    }
}

/// One cut piece.
#[derive(Clone, PartialEq, Debug)]
pub struct Piece {
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
    pub joined: Option<JoinedWidths>,
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
pub struct JoinedWidths {
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

/// One length of fusible tape, corner to corner.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub struct TapeRun {
    /// The edge it lies on.
    pub kind: EdgeKind,
    /// Where it starts.
    pub from: Point,
    /// Where it ends.
    pub to: Point,
    /// Its length, the turning opening left out.
    pub length: Length,
}

/// A strip of fastener.
#[derive(Clone, PartialEq, Debug)]
pub struct FastenerRun {
    /// What it is called.
    pub name: String,
    /// Width of the strip.
    pub width: Length,
    /// Its length.
    pub length: Length,
    /// How far its upper edge lies below the made-up top edge.
    pub down: Length,
}

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
