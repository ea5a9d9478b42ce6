//! Whether there is any layout at all; looked for before anything is laid.
//!
//! A piece that finds a place on an empty bolt finds one in every layout, on a bolt of its own if need be:
//! so each piece is looked at alone, and nothing need be laid to know. Whatever passes here keeps every sum
//! that follows far from the ends of its numbers.

use pelmet_measure::Length;

use crate::given::{
    BoltFlaw, LayingFinding, LayoutCloth, LayoutPiece, MAXIMUM_OUTLINE_CORNERS, MAXIMUM_PIECES,
    OutlineCorner, OutlinePolygon,
};
use crate::places::{Place, cuts_of};

/// Looks for everything that would stop a layout, and gives the first that is found.
pub(super) fn look_for_findings(
    cloth: &LayoutCloth,
    pieces: &[LayoutPiece],
) -> Result<(), LayingFinding> {
    look_at_cloth(cloth)?;
    let count = pieces
        .iter()
        .map(|piece| u64::from(piece.quantity))
        .fold(0, u64::saturating_add);
    if count > u64::from(MAXIMUM_PIECES) {
        return Err(LayingFinding::TooMany {
            count,
            limit: MAXIMUM_PIECES,
        });
    }
    (0..)
        .zip(pieces)
        .try_for_each(|(index, piece)| look_at_piece(cloth, index, piece))
}

fn look_at_cloth(cloth: &LayoutCloth) -> Result<(), LayingFinding> {
    if !cloth.usable_width.is_positive() {
        return Err(LayingFinding::NoUsableWidth);
    }
    let stated = [cloth.repeat_along, cloth.repeat_across, cloth.bolt_length];
    let sound = is_in_range(cloth.usable_width)
        && stated.into_iter().flatten().all(is_in_range)
        && (cloth.gap.is_zero() || is_in_range(cloth.gap))
        && is_in_range(cloth.buying_step);
    if sound {
        look_at_flaws(cloth)
    } else {
        Err(LayingFinding::ClothOutOfRange)
    }
}

fn look_at_flaws(cloth: &LayoutCloth) -> Result<(), LayingFinding> {
    let is_sound = |flaw: &BoltFlaw| {
        let starts = [flaw.from, flaw.left];
        let is_there = flaw.from < flaw.to && flaw.left < flaw.right;
        is_there
            && !starts.into_iter().any(Length::is_negative)
            && flaw.to <= Length::LARGEST
            && flaw.right <= cloth.usable_width
    };
    match cloth.flaws.iter().position(|flaw| !is_sound(flaw)) {
        Some(flaw) => Err(LayingFinding::FlawOutOfRange { flaw }),
        None => Ok(()),
    }
}

fn look_at_piece(
    cloth: &LayoutCloth,
    piece: usize,
    the: &LayoutPiece,
) -> Result<(), LayingFinding> {
    let phases = [the.phase_along, the.phase_across];
    if !is_in_range(the.width)
        || !is_in_range(the.length)
        || phases
            .into_iter()
            .flatten()
            .any(|phase| phase.abs() > Length::LARGEST)
    {
        return Err(LayingFinding::PieceOutOfRange { piece });
    }
    if the
        .outline
        .as_ref()
        .is_some_and(|outline| !is_within(outline, the))
    {
        return Err(LayingFinding::OutlineOutOfRange { piece });
    }
    let (width, length, usable) = (the.width, the.length, cloth.usable_width);
    if width > usable {
        return Err(LayingFinding::TooWide {
            piece,
            width,
            usable,
        });
    }
    if let Some(bolt) = cloth.bolt_length.filter(|bolt| length > *bolt) {
        return Err(LayingFinding::TooLong {
            piece,
            length,
            bolt,
        });
    }
    let along_needs_repeat = the.phase_along.is_some() && cloth.repeat_along.is_none();
    let across_needs_repeat = the.phase_across.is_some() && cloth.repeat_across.is_none();
    if along_needs_repeat || across_needs_repeat {
        return Err(LayingFinding::PhaseNeedsRepeat { piece });
    }
    look_at_print(cloth, piece, the)
}

/// The print may hold a piece off the cloth even though the piece alone would fit.
fn look_at_print(
    cloth: &LayoutCloth,
    piece: usize,
    the: &LayoutPiece,
) -> Result<(), LayingFinding> {
    let (width, length, usable) = (the.width, the.length, cloth.usable_width);
    // Two copies show both halves of a half drop; further ones lie as these do.
    for cut in cuts_of(cloth, piece, the).take(2) {
        let Place { across, along } = cut.first_place(Length::ZERO, usable);
        if across + width > usable {
            return Err(LayingFinding::HeldBeyondWidth {
                piece,
                across,
                width,
                usable,
            });
        }
        if let Some(bolt) = cloth.bolt_length.filter(|bolt| along + length > *bolt) {
            return Err(LayingFinding::HeldBeyondBolt {
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

fn is_within(outline: &OutlinePolygon, piece: &LayoutPiece) -> bool {
    let corners = outline.corners();
    let is_within = |corner: &OutlineCorner| {
        (Length::ZERO..=piece.width).contains(&corner.across)
            && (Length::ZERO..=piece.length).contains(&corner.along)
    };
    (3..=MAXIMUM_OUTLINE_CORNERS).contains(&corners.len())
        && corners.iter().all(is_within)
        && (Length::ZERO..=piece.width).contains(&outline.strays())
}
