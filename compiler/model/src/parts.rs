//! The parts of a panel: its layers, its edges, and the ends of the row it hangs in.

use crate::closed_set::closed_set;

closed_set! {
    /// The kinds of edge; each has its own allowance.
    pub enum EdgeKind {
        /// The made-up top edge.
        Top = "top",
        /// A side, straight up and down at the panel's full width.
        Side = "side",
        /// All the rest.
        Lower = "lower edge",
        /// Where a band is sewn to the face, or to another band.
        Band = "band seam",
    }
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

closed_set! {
    /// The kinds of layer. The word of each is also the property that names its cloth.
    pub enum LayerKind {
        /// The cloth that is seen.
        Face = "face",
        /// The soft cloth between face and lining.
        Interlining = "interlining",
        /// The cloth behind.
        Lining = "lining",
        /// A band along an edge.
        Band = "band",
    }
}

impl Layer {
    /// Every layer that covers the whole panel, from the front to the back.
    pub const ALL: [Self; 3] = [Self::Face, Self::Interlining, Self::Lining];

    /// Its kind.
    #[must_use]
    pub const fn kind(self) -> LayerKind {
        match self {
            Self::Face => LayerKind::Face,
            Self::Interlining => LayerKind::Interlining,
            Self::Lining => LayerKind::Lining,
            Self::Band(_) => LayerKind::Band,
        }
    }

    /// The word for its kind.
    #[must_use]
    pub const fn word(self) -> &'static str {
        self.kind().word()
    }
}

closed_set! {
    /// The edge of a panel that a band lies along.
    pub enum BandEdge {
        /// The top.
        Top = "at top",
        /// The left side.
        Left = "at left side",
        /// The lower edge.
        Lower = "at lower edge",
        /// The right side.
        Right = "at right side",
    }
}

closed_set! {
    /// An end of the row.
    pub enum End {
        /// The left one, seen from the room.
        Left = "left",
        /// The right one.
        Right = "right",
    }
}
