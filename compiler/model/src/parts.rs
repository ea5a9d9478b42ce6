//! The parts of a panel: its layers, its edges, and the ends of the row it hangs in.

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

/// The edge of a panel that a band lies along.
#[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub enum BandEdge {
    /// The top.
    Top,
    /// The left side.
    Left,
    /// The lower edge.
    Lower,
    /// The right side.
    Right,
}

/// An end of the row.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum End {
    /// The left one, seen from the room.
    Left,
    /// The right one.
    Right,
}
