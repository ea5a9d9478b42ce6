//! What the sums have to say against an order. Places are of cloth: a window, a panel, a step.

use pelmet_measure::{Length, Ratio};

use crate::{FastenerOrder, Figure, Layer, MakingMatter};

/// One thing found, and where.
#[derive(Clone, PartialEq, Debug)]
pub struct Finding {
    /// What it concerns.
    pub subject: Subject,
    /// What was found.
    pub matter: Matter,
}

/// What a finding concerns.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum Subject {
    /// A window, by index in the job.
    Window(usize),
    /// A panel of a window, both by index.
    Panel {
        /// The window.
        window: usize,
        /// The panel.
        panel: usize,
    },
}

/// What was found, by the part of the sums that found it.
#[derive(Clone, PartialEq, Debug)]
pub enum Matter {
    /// In the pleats.
    Pleats(PleatMatter),
    /// In the outline.
    Outline(OutlineMatter),
    /// In the row.
    Row(RowMatter),
    /// In the pieces or the heading.
    Piece(PieceMatter),
    /// In what the making method asks of the panel.
    Making(MakingMatter),
}

impl From<PleatMatter> for Matter {
    fn from(matter: PleatMatter) -> Self {
        Self::Pleats(matter)
    }
}

impl From<OutlineMatter> for Matter {
    fn from(matter: OutlineMatter) -> Self {
        Self::Outline(matter)
    }
}

impl From<RowMatter> for Matter {
    fn from(matter: RowMatter) -> Self {
        Self::Row(matter)
    }
}

impl From<PieceMatter> for Matter {
    fn from(matter: PieceMatter) -> Self {
        Self::Piece(matter)
    }
}

impl From<MakingMatter> for Matter {
    fn from(matter: MakingMatter) -> Self {
        Self::Making(matter)
    }
}

/// Findings in the pleats. `step` is the number of a written step.
#[derive(Clone, PartialEq, Debug)]
pub enum PleatMatter {
    /// Neither width is given and the rule leaves something open that one of them would settle.
    WidthMissing,
    /// Nothing the rule allows meets the width asked for.
    NoFit {
        /// The width asked for.
        wanted: Length,
        /// Whether that is a finished width (false: a flat width).
        finished: bool,
        /// The nearest width that works below, and its number of pleats.
        below: Option<(Length, u32)>,
        /// The nearest width that works above, and its number of pleats.
        above: Option<(Length, u32)>,
    },
    /// Flat and finished width are both given and no take-up the rule allows joins them.
    WidthsContradict {
        /// As ordered.
        flat: Length,
        /// As ordered.
        finished: Length,
        /// Take-up the rule makes, or comes nearest with.
        take_up: Length,
    },
    /// The pleats take more cloth than there is.
    TakesTooMuch {
        /// Flat width there is.
        flat: Length,
        /// Flat width the pleats and spaces take.
        taken: Length,
    },
    /// A fold passes the centre line into the other half.
    FoldCrossesCentre {
        /// The pleat's step.
        step: usize,
        /// By how much.
        amount: Length,
        /// Flat distance of the fold from the centre.
        fold_at: Length,
        /// Take-ups between the centre and the fold, the fold's own pleat included.
        taken_up: Length,
    },
    /// A fold hangs out past the panel's edge.
    FoldOverrunsEdge {
        /// The pleat's step.
        step: usize,
        /// By how much.
        amount: Length,
    },
    /// The panel's side edge lies inside a fold, hidden.
    EdgeInsideFold {
        /// The pleat's step.
        step: usize,
        /// Flat distance of the fold from the edge.
        fold_at: Length,
        /// Take-ups between the edge and the fold, the fold's own pleat included.
        taken_up: Length,
    },
    /// Two pleats need the same flat cloth.
    PleatsRunTogether {
        /// The pleat that comes first.
        first: usize,
        /// The pleat that runs into it.
        second: usize,
        /// Where the first ends, flat, from where the rule starts.
        ends: Length,
        /// Where the second begins, measured alike.
        begins: Length,
    },
    /// More layers lie over one another than the rule intends.
    FoldOnFold {
        /// The pleat whose fold lies deepest.
        step: usize,
        /// How many layers.
        layers: u32,
        /// How many are intended.
        intended: u32,
        /// Where, from the left end of the finished width.
        from: Length,
        /// How far that goes on.
        to: Length,
    },
    /// The rule follows the print across, and the face has none.
    NoPrintAcross,
    /// No length the rule allows brings the same part of the print to the next pleat.
    PrintOutOfReach {
        /// The step that should give way.
        step: usize,
        /// How often its length lies between the middles of two pleats.
        times: i64,
        /// The cloth that lies there besides.
        besides: Length,
        /// The print's period across, as the cloth is made up.
        repeat: Length,
        /// The nearest length below its ideal that does, where there is one.
        below: Option<Length>,
        /// The nearest length above.
        above: Length,
    },
    /// Nothing between a pleat and the one before it can follow the print.
    NothingFollowsPrint {
        /// The pleat's step.
        step: usize,
    },
    /// One cloth says how thick it is and another does not, so no turn of cloth is counted.
    TurnNotCounted {
        /// The layer whose cloth does not say.
        layer: Layer,
    },
    /// Strips of tape behind the folds are longer than the shallowest pleat is deep.
    StripShows {
        /// The shallowest pleat's step.
        step: usize,
        /// Length of the strips.
        length: Length,
        /// Depth of that pleat.
        depth: Length,
    },
    /// More pleats than the limit.
    TooManyPleats {
        /// The step that asks for them.
        step: usize,
        /// The limit.
        limit: u32,
    },
}

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
        /// The step.
        step: usize,
        /// By how much.
        amount: Length,
        /// The width it should reach across.
        width: Length,
    },
    /// A point lies outside the panel's width or drop.
    OutsideSize {
        /// The step.
        step: usize,
        /// By how much.
        amount: Length,
        /// Beyond the lower end of the drop, above the heading line, past the edge, or across the fold.
        side: &'static str,
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
        /// The limit.
        limit: u32,
    },
    /// There is no such arc.
    NoArc {
        /// The step.
        step: usize,
        /// Why not.
        fault: ArcFault,
    },
    /// A curve is so tight that its allowance runs into itself.
    CurveTooTight {
        /// The step.
        step: usize,
        /// The radius where it is tightest.
        radius: Length,
        /// The least that leaves room.
        needed: Length,
    },
    /// An edge has no length.
    NoLength {
        /// The step.
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

/// Findings in the row.
#[derive(Clone, PartialEq, Debug)]
pub enum RowMatter {
    /// The panels do not cover the length.
    Uncovered {
        /// By how much.
        amount: Length,
        /// The length to cover.
        to_cover: Length,
        /// What is covered.
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
        /// The overlap.
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
        /// Its drop.
        drop: Length,
        /// Height of the rod's top.
        height: Length,
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

/// Findings in pieces and heading.
#[derive(Clone, PartialEq, Debug)]
pub enum PieceMatter {
    /// A panel has no width: none given, nothing to fill.
    NoWidth,
    /// Two of flat, finished, cut width and fullness disagree.
    WidthsDisagree {
        /// One, as named to the maker ("flat width").
        first: &'static str,
        /// Its length.
        first_length: Length,
        /// The other.
        second: &'static str,
        /// Its length.
        second_length: Length,
    },
    /// A size came out at zero or less.
    NothingLeft {
        /// Which size ("flat width").
        size: &'static str,
        /// What it came out at.
        length: Length,
    },
    /// A sum went past the largest length.
    TooLarge {
        /// Which size.
        size: &'static str,
    },
    /// The words of a step name a figure that the panel has not.
    FigureAbsent {
        /// The step of the making method, by index.
        step: usize,
        /// The sentence of the step, by index.
        sentence: usize,
        /// The figure.
        figure: Figure,
    },
    /// A fullness under one.
    FullnessUnderOne {
        /// The fullness.
        fullness: Ratio,
    },
    /// A heading for a rod on a board, or the other way round.
    HeadingNeedsOther {
        /// What the heading needs ("rod", "board").
        needs: &'static str,
    },
    /// The drop is less than half the rod.
    DropTooShort {
        /// As ordered.
        drop: Length,
        /// The least that makes sense.
        least: Length,
    },
    /// The pocket is too small for the rod: a flat pocket of depth f takes a rod of diameter d only if 2f >= pi*d.
    PocketTooSmall {
        /// Depth of the pocket.
        pocket: Length,
        /// The least that takes the rod.
        least: Length,
    },
    /// The fastener is wider than the tail that carries it.
    FastenerWiderThanTail {
        /// As ordered.
        fastener: FastenerOrder,
        /// The tail.
        tail: Length,
    },
    /// The tail is as long as the drop or longer and would show below.
    TailShows {
        /// The tail.
        tail: Length,
        /// The drop.
        drop: Length,
    },
    /// The turning opening does not fit in the top edge.
    OpeningTooWide {
        /// As ordered.
        opening: Length,
        /// The top edge.
        edge: Length,
    },
    /// A piece is longer than the bolt.
    LongerThanBolt {
        /// Its layer.
        layer: Layer,
        /// Cut length.
        cut_length: Length,
        /// The bolt.
        bolt: Length,
    },
    /// The usable width leaves nothing after selvages or join allowances.
    ClothTooNarrow {
        /// The layer that needs it.
        layer: Layer,
        /// What is usable.
        usable: Length,
        /// What a strip needs at the least.
        needed: Length,
    },
    /// A seam between widths lies where it is seen.
    SeamShows {
        /// The layer.
        layer: Layer,
        /// Flat position of the seam from the left edge.
        at: Length,
        /// The nearest flat position that a pleat hides; `None` where none hides any.
        hidden_at: Option<Length>,
    },
    /// A panel is cut on the fold, but its two halves are not alike.
    HalvesDiffer,
    /// The motif is to lie below the lower edge.
    MotifBelowDrop {
        /// How far below the heading line it is to lie.
        below_heading: Length,
        /// The panel's drop.
        drop: Length,
    },
    /// The middle of the panel, where the motif is to lie, is hidden by a pleat.
    MotifHidden {
        /// Flat position of the middle from the left edge.
        at: Length,
        /// The flat cloth that is hidden there, from and to.
        hidden: (Length, Length),
    },
    /// Where pleats lie, the layers are together thicker than the method allows.
    StackTooThick {
        /// How many layers of the panel lie there.
        layers: u32,
        /// How thick one of them is.
        layer: Length,
        /// What the method allows.
        limit: Length,
    },
    /// The method limits a stack of cloth that does not say how thick it is.
    ThicknessMissing {
        /// The layer cut from that cloth.
        layer: Layer,
        /// What the method allows.
        limit: Length,
    },
    /// More strips than the limit.
    TooManyWidths {
        /// The layer.
        layer: Layer,
        /// The limit.
        limit: u32,
    },
}
