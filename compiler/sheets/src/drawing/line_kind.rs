//! What lines mean.

/// What a line means; the same in every drawing.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub(crate) enum LineKind {
    /// An area of cloth that no piece uses.
    Waste,
    /// A flaw, which no piece may use.
    Flaw,
    /// The woven edges, which no piece may use.
    Selvage,
    /// Where the shears go.
    Cut,
    /// The cloth of a piece of which only a part is seen.
    Piece,
    /// Where in a piece the part of the print lies that is held.
    Print,
    /// Where cloth is sewn; of a hem, its finished edge.
    Sewn,
    /// The middle of a panel or a piece.
    Centre,
    /// Where cloth is folded; where it matters which way, with its ridge toward whoever looks.
    Fold,
    /// Where cloth is folded with its ridge away from whoever looks.
    FoldAway,
    /// An area of cloth that something lies over.
    Hidden,
    /// An area of cloth that is turned over.
    Turned,
    /// Cloth seen on its edge.
    Edge,
    /// An arrow along which cloth is brought.
    Move,
    /// Cloth as it hangs, its face to the room.
    Face,
    /// Cloth turned over.
    Lining,
    /// The edges of what the treatment hangs before.
    Opening,
    /// Where cloth is stitched together or drawn up.
    DrawnUp,
    /// The rod or board.
    Support,
    /// Where the print comes round.
    Repeat,
    /// A measure, its ends or a scale.
    Measure,
    /// An arrow that points to the top of a piece.
    Top,
    /// Between the rows of a table.
    Rule,
    /// Under a title or the head of a table.
    Underline,
    /// The box before a step, ticked once the step is done.
    Box,
    /// Where the shears go, along a part of a piece.
    CutEdge,
    /// The edge of what a page shows.
    Frame,
    /// Where the edge of another page is laid.
    Join,
    /// Where paper is cut apart.
    Apart,
}

impl LineKind {
    /// Every kind of line.
    pub(crate) const ALL: &[Self] = &[
        Self::Waste,
        Self::Flaw,
        Self::Selvage,
        Self::Cut,
        Self::Piece,
        Self::Print,
        Self::Sewn,
        Self::Centre,
        Self::Fold,
        Self::FoldAway,
        Self::Hidden,
        Self::Turned,
        Self::Edge,
        Self::Move,
        Self::Face,
        Self::Lining,
        Self::Opening,
        Self::DrawnUp,
        Self::Support,
        Self::Repeat,
        Self::Measure,
        Self::Top,
        Self::Rule,
        Self::Underline,
        Self::Box,
        Self::CutEdge,
        Self::Frame,
        Self::Join,
        Self::Apart,
    ];
}
