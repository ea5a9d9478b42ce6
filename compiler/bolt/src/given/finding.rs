//! Why pieces cannot be laid.

use pelmet_measure::Length;
use thiserror::Error;

/// The most pieces one cloth may carry, every copy counted.
pub const MAXIMUM_PIECES: u32 = 100_000;

/// Why pieces cannot be laid on a cloth. In all of them `piece` is an index into the pieces given.
#[derive(Clone, PartialEq, Eq, Debug, Error)]
pub enum LayingFinding {
    /// The selvages leave no width to cut from.
    #[error("the cloth has no usable width")]
    NoUsableWidth,
    /// A length of the cloth is out of range: a repeat or a bolt without length, a gap below
    /// zero, or anything longer than [`Length::LARGEST`].
    #[error("the cloth has a length out of range")]
    ClothOutOfRange,
    /// A length of the piece is out of range: no width or no length, or anything longer than
    /// [`Length::LARGEST`].
    #[error("piece {piece} has a length out of range")]
    PieceOutOfRange {
        /// Which piece has it, be it its width, its length or a phase.
        piece: usize,
    },
    /// The outline of the piece leaves its width or length, or has too few corners or more than
    /// [`MAXIMUM_OUTLINE_CORNERS`](crate::MAXIMUM_OUTLINE_CORNERS).
    #[error("piece {piece} has an outline out of range")]
    OutlineOutOfRange {
        /// Which piece is to be cut along it.
        piece: usize,
    },
    /// A flaw is out of range: it has no length or no width, or begins before its bolt or outside
    /// the usable width.
    #[error("flaw {flaw} is out of range")]
    FlawOutOfRange {
        /// Which flaw, by index among those of the cloth.
        flaw: usize,
    },
    /// The piece is wider than the cloth.
    #[error("piece {piece} is wider than the cloth")]
    TooWide {
        /// The first such piece.
        piece: usize,
        /// How wide it is cut.
        width: Length,
        /// The usable width of the cloth, which is less.
        usable: Length,
    },
    /// The piece is longer than a whole bolt.
    #[error("piece {piece} is longer than the bolt")]
    TooLong {
        /// The first such piece.
        piece: usize,
        /// How long it is cut.
        length: Length,
        /// The length of a bolt, which is less.
        bolt: Length,
    },
    /// The piece is held to a repeat that the cloth does not have.
    #[error("piece {piece} is held to a repeat that the cloth does not have")]
    PhaseNeedsRepeat {
        /// Which piece has a phase, along or across.
        piece: usize,
    },
    /// The piece would fit the width, but not where the print holds it.
    #[error("piece {piece} is held by the print where the cloth is too narrow for it")]
    HeldBeyondWidth {
        /// The first such piece.
        piece: usize,
        /// How far from the left end of the usable width the print lets its left edge lie first.
        across: Length,
        /// How wide it is cut.
        width: Length,
        /// The usable width of the cloth: less than the two together.
        usable: Length,
    },
    /// The piece would fit the bolt, but not where the print holds it.
    #[error("piece {piece} is held by the print where the bolt is too short for it")]
    HeldBeyondBolt {
        /// The first such piece.
        piece: usize,
        /// How far from the start of a bolt the print lets its top lie first.
        along: Length,
        /// How long it is cut.
        length: Length,
        /// The length of a bolt: less than the two together.
        bolt: Length,
    },
    /// There are more pieces than [`MAXIMUM_PIECES`].
    #[error("there are {count} pieces; one cloth carries at most {limit}")]
    TooMany {
        /// How many there are, every copy counted.
        count: u64,
        /// The limit they exceed, [`MAXIMUM_PIECES`].
        limit: u32,
    },
}
