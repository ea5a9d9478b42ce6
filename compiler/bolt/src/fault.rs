//! What can be wrong with a layout.

use thiserror::Error;

/// A direction on the bolt.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum Direction {
    /// Along the bolt.
    Along,
    /// Across the bolt.
    Across,
}

/// A promise of the layout that is broken. `placed`, `first` and `second` are indices into
/// [`Layout::placed`](crate::Layout::placed), `piece` is one into the pieces laid.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Error)]
pub enum Fault {
    /// There is no such piece, or no such copy of it.
    #[error("place {placed} holds a piece that is not to be cut")]
    NotToBeCut {
        /// Where it lies.
        placed: usize,
    },
    /// A copy lies in two places; this is the second.
    #[error("place {placed} holds a piece that is cut elsewhere too")]
    CutTwice {
        /// Where it lies.
        placed: usize,
    },
    /// A piece is not laid as often as it is to be cut.
    #[error("piece {piece} is laid {found} times, but is to be cut {wanted} times")]
    WrongQuantity {
        /// The piece.
        piece: usize,
        /// How often it is to be cut.
        wanted: u32,
        /// How many of its copies are laid.
        found: u32,
    },
    /// A piece lies partly outside the usable width.
    #[error("place {placed} is outside the usable width")]
    OutsideWidth {
        /// Where it lies.
        placed: usize,
    },
    /// The outline of a piece crosses itself or encloses nothing.
    #[error("the outline of piece {piece} encloses no piece")]
    NotAnOutline {
        /// The piece.
        piece: usize,
    },
    /// A piece starts before its bolt or ends after it.
    #[error("place {placed} is outside the bolt")]
    OutsideBolt {
        /// Where it lies.
        placed: usize,
    },
    /// A piece lies on a flaw, named by its index in the cloth.
    #[error("place {placed} is on flaw {flaw}")]
    OnFlaw {
        /// Where it lies.
        placed: usize,
        /// What it lies on.
        flaw: usize,
    },
    /// A piece lies on a bolt that the layout does not count.
    #[error("place {placed} is on a bolt that is not counted")]
    UnknownBolt {
        /// Where it lies.
        placed: usize,
    },
    /// Two pieces lie over each other.
    #[error("places {first} and {second} overlap")]
    Overlap {
        /// One of them.
        first: usize,
        /// The other.
        second: usize,
    },
    /// Two pieces leave the shears less than the gap.
    #[error("places {first} and {second} are too close")]
    TooClose {
        /// One of them.
        first: usize,
        /// The other.
        second: usize,
    },
    /// A piece's point does not lie on a line of the print.
    #[error("place {placed} is off the repeat")]
    OffRepeat {
        /// Where it lies.
        placed: usize,
        /// In which direction it is off.
        direction: Direction,
    },
    /// A piece is turned end for end on one-way cloth.
    #[error("place {placed} is turned on one-way cloth")]
    TurnedOneWay {
        /// Where it lies.
        placed: usize,
    },
    /// A piece cut on the fold lies on no stretch that says how the cloth lies.
    #[error("place {placed} is in no section")]
    InNoSection {
        /// Where it lies.
        placed: usize,
    },
    /// A section does not begin where the one before it ends, or cuts through a piece.
    #[error("section {section} cannot be cut off")]
    WrongSection {
        /// The section, by index.
        section: usize,
    },
    /// A fold catches a piece that is not cut on it.
    #[error("section {section} cannot be folded as it says")]
    WrongFold {
        /// The section, by index.
        section: usize,
    },
    /// A bolt's length is not where its last piece ends, or what is bought of it is not that
    /// length rounded up.
    #[error("the length of bolt {bolt} is not what its pieces take")]
    WrongBolt {
        /// The bolt, from 0.
        bolt: usize,
    },
    /// The lengths used or bought of the bolts do not add up to the stated ones.
    #[error("the lengths of the bolts do not add up")]
    WrongTotal,
    /// The layout is longer than the rule of thumb it claims to keep to.
    #[error("the layout is longer than the rule of thumb")]
    LongerThanRule,
    /// The layout is shorter than the length it says no layout can beat.
    #[error("the layout is shorter than its own bound")]
    ShorterThanBound,
}
