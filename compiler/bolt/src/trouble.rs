//! What cannot be laid, and why; looked for before anything is laid.

use pelmet_measure::Length;
use thiserror::Error;

use crate::cut::cuts_of;
use crate::space::Place;
use crate::{Cloth, Corner, Flaw, MAXIMUM_OUTLINE_CORNERS, Outline, Piece};

/// The most pieces one cloth may carry, every copy counted.
pub const MAXIMUM_PIECES: u32 = 100_000;

/// Why pieces cannot be laid on a cloth. Pieces are named by index.
#[derive(Clone, PartialEq, Eq, Debug, Error)]
pub enum LayoutTrouble {
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
        /// The piece.
        piece: usize,
    },
    /// The outline of the piece leaves its width or length, or has too few corners or more than
    /// [`MAXIMUM_OUTLINE_CORNERS`].
    #[error("piece {piece} has an outline out of range")]
    OutlineOutOfRange {
        /// The piece.
        piece: usize,
    },
    /// A flaw is out of range: it has no length or no width, or begins before its bolt or outside
    /// the usable width.
    #[error("flaw {flaw} is out of range")]
    FlawOutOfRange {
        /// The flaw.
        flaw: usize,
    },
    /// The piece is wider than the cloth.
    #[error("piece {piece} is wider than the cloth")]
    TooWide {
        /// The piece.
        piece: usize,
        /// Its cut width.
        width: Length,
        /// The usable width of the cloth.
        usable: Length,
    },
    /// The piece is longer than a whole bolt.
    #[error("piece {piece} is longer than the bolt")]
    TooLong {
        /// The piece.
        piece: usize,
        /// Its cut length.
        length: Length,
        /// The length of a bolt.
        bolt: Length,
    },
    /// The piece is held to a repeat that the cloth does not have.
    #[error("piece {piece} is held to a repeat that the cloth does not have")]
    PhaseNeedsRepeat {
        /// The piece.
        piece: usize,
    },
    /// The piece would fit the width, but not where the print holds it.
    #[error("piece {piece} is held by the print where the cloth is too narrow for it")]
    HeldBeyondWidth {
        /// The piece.
        piece: usize,
        /// The first place across that the print allows.
        across: Length,
        /// Its cut width.
        width: Length,
        /// The usable width of the cloth.
        usable: Length,
    },
    /// The piece would fit the bolt, but not where the print holds it.
    #[error("piece {piece} is held by the print where the bolt is too short for it")]
    HeldBeyondBolt {
        /// The piece.
        piece: usize,
        /// The first place along that the print allows.
        along: Length,
        /// Its cut length.
        length: Length,
        /// The length of a bolt.
        bolt: Length,
    },
    /// There are more pieces than [`MAXIMUM_PIECES`].
    #[error("there are {count} pieces; one cloth carries at most {limit}")]
    TooMany {
        /// How many there are, every copy counted.
        count: u64,
        /// How many there may be.
        limit: u32,
    },
}

/// Looks for everything that would stop a layout; the first found is reported.
pub(crate) fn look_for_trouble(cloth: &Cloth, pieces: &[Piece]) -> Result<(), LayoutTrouble> {
    look_at_cloth(cloth)?;
    let count = pieces
        .iter()
        .map(|piece| u64::from(piece.quantity))
        .fold(0, u64::saturating_add);
    if count > u64::from(MAXIMUM_PIECES) {
        return Err(LayoutTrouble::TooMany {
            count,
            limit: MAXIMUM_PIECES,
        });
    }
    (0..)
        .zip(pieces)
        .try_for_each(|(index, piece)| look_at_piece(cloth, index, piece))
}

fn look_at_cloth(cloth: &Cloth) -> Result<(), LayoutTrouble> {
    if !cloth.usable_width.is_positive() {
        return Err(LayoutTrouble::NoUsableWidth);
    }
    let stated = [cloth.repeat_along, cloth.repeat_across, cloth.bolt_length];
    let sound = is_in_range(cloth.usable_width)
        && stated.into_iter().flatten().all(is_in_range)
        && (cloth.gap.is_zero() || is_in_range(cloth.gap))
        && is_in_range(cloth.buying_step);
    if sound {
        look_at_flaws(cloth)
    } else {
        Err(LayoutTrouble::ClothOutOfRange)
    }
}

fn look_at_flaws(cloth: &Cloth) -> Result<(), LayoutTrouble> {
    let is_sound = |flaw: &Flaw| {
        let starts = [flaw.from, flaw.left];
        let is_there = flaw.from < flaw.to && flaw.left < flaw.right;
        is_there
            && !starts.into_iter().any(Length::is_negative)
            && flaw.to <= Length::LARGEST
            && flaw.right <= cloth.usable_width
    };
    match cloth.flaws.iter().position(|flaw| !is_sound(flaw)) {
        Some(flaw) => Err(LayoutTrouble::FlawOutOfRange { flaw }),
        None => Ok(()),
    }
}

fn look_at_piece(cloth: &Cloth, piece: usize, the: &Piece) -> Result<(), LayoutTrouble> {
    let phases = [the.phase_along, the.phase_across];
    if !is_in_range(the.width)
        || !is_in_range(the.length)
        || phases
            .into_iter()
            .flatten()
            .any(|phase| phase.abs() > Length::LARGEST)
    {
        return Err(LayoutTrouble::PieceOutOfRange { piece });
    }
    if the
        .outline
        .as_ref()
        .is_some_and(|outline| !is_within(outline, the))
    {
        return Err(LayoutTrouble::OutlineOutOfRange { piece });
    }
    let (width, length, usable) = (the.width, the.length, cloth.usable_width);
    if width > usable {
        return Err(LayoutTrouble::TooWide {
            piece,
            width,
            usable,
        });
    }
    if let Some(bolt) = cloth.bolt_length.filter(|bolt| length > *bolt) {
        return Err(LayoutTrouble::TooLong {
            piece,
            length,
            bolt,
        });
    }
    let along_needs_repeat = the.phase_along.is_some() && cloth.repeat_along.is_none();
    let across_needs_repeat = the.phase_across.is_some() && cloth.repeat_across.is_none();
    if along_needs_repeat || across_needs_repeat {
        return Err(LayoutTrouble::PhaseNeedsRepeat { piece });
    }
    look_at_print(cloth, piece, the)
}

/// The print may hold a piece off the cloth even though the piece alone would fit.
fn look_at_print(cloth: &Cloth, piece: usize, the: &Piece) -> Result<(), LayoutTrouble> {
    let (width, length, usable) = (the.width, the.length, cloth.usable_width);
    // Two copies show both halves of a half drop; further ones lie as these do.
    for cut in cuts_of(cloth, piece, the).take(2) {
        let Place { across, along } = cut.first_place(Length::ZERO, usable);
        if across + width > usable {
            return Err(LayoutTrouble::HeldBeyondWidth {
                piece,
                across,
                width,
                usable,
            });
        }
        if let Some(bolt) = cloth.bolt_length.filter(|bolt| along + length > *bolt) {
            return Err(LayoutTrouble::HeldBeyondBolt {
                piece,
                along,
                length,
                bolt,
            });
        }
    }
    Ok(())
}

fn is_in_range(length: Length) -> bool {
    length.is_positive() && length <= Length::LARGEST
}

fn is_within(outline: &Outline, piece: &Piece) -> bool {
    let corners = outline.corners();
    let is_within = |corner: &Corner| {
        (Length::ZERO..=piece.width).contains(&corner.across)
            && (Length::ZERO..=piece.length).contains(&corner.along)
    };
    (3..=MAXIMUM_OUTLINE_CORNERS).contains(&corners.len())
        && corners.iter().all(is_within)
        && (Length::ZERO..=piece.width).contains(&outline.strays())
}
