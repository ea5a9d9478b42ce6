//! A label to pin to a piece.

/// What is written on the label that is pinned to one piece, line by line.
#[derive(Clone, PartialEq, Eq, Debug)]
pub(crate) struct PieceLabel {
    pub(crate) job: String,
    /// The number of the piece on its cloth.
    pub(crate) number: u32,
    pub(crate) cloth: String,
    /// The names of its window and its panel, with a blank between them.
    pub(crate) panel: String,
    /// The layer and, of a joined piece, the strip.
    pub(crate) layer: String,
    /// Its width and length, the length toward its top.
    pub(crate) size: String,
    /// Which of how many alike, and how it lies on the cloth where that is not its top first.
    pub(crate) remarks: String,
}
