//! What the checker can find wrong with a layout.

use thiserror::Error;

/// One of the two directions on the bolt in which the print may hold a piece.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum BoltDirection {
    /// With the bolt's length, as the warp runs.
    Along,
    /// From selvage to selvage.
    Across,
}

/// A promise of the layout that is broken. `placed`, `first` and `second` are indices into
/// [`Layout::placed`](crate::Layout::placed), `piece` is one into the pieces laid.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Error)]
pub enum CheckerFinding {
    /// There is no such piece, or no such copy of it.
    #[error("place {placed} holds a piece that is not to be cut")]
    NotToBeCut {
        /// Which place holds it.
        placed: usize,
    },
    /// A copy lies in two places; this is the second.
    #[error("place {placed} holds a piece that is cut elsewhere too")]
    CutTwice {
        /// The second of the two places.
        placed: usize,
    },
    /// A piece is not laid as often as it is to be cut.
    #[error("piece {piece} is laid {found} times, but is to be cut {wanted} times")]
    WrongQuantity {
        /// Which piece, by index among those given.
        piece: usize,
        /// How often it is to be cut.
        wanted: u32,
        /// How many of its copies are laid.
        found: u32,
    },
    /// A piece lies partly outside the usable width.
    #[error("place {placed} is outside the usable width")]
    OutsideWidth {
        /// Which piece, by its place.
        placed: usize,
    },
    /// The outline of a piece crosses itself or encloses nothing.
    #[error("the outline of piece {piece} encloses no piece")]
    NotAnOutline {
        /// Which piece is to be cut along it.
        piece: usize,
    },
    /// A piece starts before its bolt or ends after it.
    #[error("place {placed} is outside the bolt")]
    OutsideBolt {
        /// Which piece, by its place.
        placed: usize,
    },
    /// A piece lies on a flaw, named by its index in the cloth.
    #[error("place {placed} is on flaw {flaw}")]
    OnFlaw {
        /// Which piece, by its place.
        placed: usize,
        /// Which flaw it lies on, by index among those of the cloth.
        flaw: usize,
    },
    /// A piece lies on a bolt that the layout does not count.
    #[error("place {placed} is on a bolt that is not counted")]
    UnknownBolt {
        /// Which piece, by its place.
        placed: usize,
    },
    /// Two pieces lie over each other.
    #[error("places {first} and {second} overlap")]
    Overlap {
        /// The piece that comes first in the layout.
        first: usize,
        /// The one that comes later.
        second: usize,
    },
    /// Two pieces leave the shears less than the gap.
    #[error("places {first} and {second} are too close")]
    TooClose {
        /// The piece that comes first in the layout.
        first: usize,
        /// The one that comes later.
        second: usize,
    },
    /// A piece's point does not lie on a line of the print.
    #[error("place {placed} is off the repeat")]
    OffRepeat {
        /// Which piece, by its place.
        placed: usize,
        /// Which of the two repeats it misses.
        direction: BoltDirection,
    },
    /// A piece is turned end for end on one-way cloth.
    #[error("place {placed} is turned on one-way cloth")]
    TurnedOneWay {
        /// Which piece, by its place.
        placed: usize,
    },
    /// A piece cut on the fold lies on no stretch that says how the cloth lies.
    #[error("place {placed} is in no section")]
    InNoSection {
        /// Which piece, by its place.
        placed: usize,
    },
    /// A section does not begin where the one before it ends, or cuts through a piece.
    #[error("section {section} cannot be cut off")]
    WrongSection {
        /// Which section, by index into [`Layout::sections`](crate::Layout::sections).
        section: usize,
    },
    /// A fold catches a piece that is not cut on it.
    #[error("section {section} cannot be folded as it says")]
    WrongFold {
        /// Which section, by index into [`Layout::sections`](crate::Layout::sections).
        section: usize,
    },
    /// A bolt's length is not where its last piece ends, or what is bought of it is not that
    /// length rounded up.
    #[error("the length of bolt {bolt} is not what its pieces take")]
    WrongBolt {
        /// Which bolt, from 0.
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
