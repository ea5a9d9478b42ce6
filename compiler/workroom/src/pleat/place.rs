//! Placing the settled pieces of a rule on the whole strip.

use pelmet_measure::Length;
use pelmet_model::{CreaseMade, PleatMatter, Pleating};

use super::halves::Halves;
use super::laid::Laid;
use super::piece::{Measure, Piece, PieceKind, sum};
use super::walk::Walk;
use crate::rounding::ROUNDING;

/// Places the pieces on a strip of this flat width.
///
/// # Errors
///
/// Pieces that need more cloth than there is, or the same cloth as a placed pleat.
pub(super) fn pleating(
    mut pieces: Vec<Piece>,
    halves: Halves,
    flat: Length,
) -> Result<Pleating, PleatMatter> {
    let part_flat = halves.part(flat);
    let bare = Walk::along(&pieces, halves, flat)?;
    if bare.needed > part_flat + ROUNDING {
        return Err(PleatMatter::TakesTooMuch {
            flat,
            taken: halves.whole(bare.needed),
        });
    }
    give_rest(&mut pieces, part_flat - bare.at);
    let described = in_finished_order(Walk::along(&pieces, halves, flat)?.laid);
    let part_take_up = sum(&pieces, Measure::TakeUp);
    let finished = flat - halves.panel_take_up(part_take_up);
    let centre = flat - part_flat;
    let pleats = match halves {
        Halves::Whole => described,
        Halves::LeftMirrored => {
            let right = mirrored(&described, flat, finished);
            [described, right].concat()
        }
        Halves::RightMirrored => {
            let right = moved(described, centre, centre - part_take_up);
            [mirrored(&right, flat, finished), right].concat()
        }
        Halves::RightOnly => moved(described, centre, centre),
    };
    Ok(numbered(pleats, flat, finished))
}

/// Shares what is left evenly among the plain cloth that takes it; before a placed pleat there is
/// nothing to share, since its place settles what lies there.
fn give_rest(pieces: &mut [Piece], left: Length) {
    let after = pieces.iter().rposition(Piece::is_placed).unwrap_or(0);
    let rests = || pieces.iter().skip(after).filter(|piece| piece.is_rest());
    let (left, count) = (
        left.max(Length::ZERO),
        u64::try_from(rests().count()).unwrap_or(0),
    );
    let mut given = Length::ZERO;
    let mut takers = 1..;
    for piece in pieces.iter_mut().skip(after) {
        if let PieceKind::Rest(length) = &mut piece.kind {
            let due = left.portion(takers.next().unwrap_or(count), count);
            *length = due - given;
            given = due;
        }
    }
}

/// The pleats from left to right, each with the finished places of its folds: their flat places
/// less what is taken up and lost in turns before them.
fn in_finished_order(mut pleats: Vec<Laid>) -> Vec<Laid> {
    pleats.sort_by_key(|laid| laid.pleat.from);
    let mut taken = Length::ZERO;
    for laid in &mut pleats {
        for fold in &mut laid.pleat.folds {
            fold.finished -= taken;
        }
        taken += laid.pleat.take_up + laid.pleat.lost_in_turns();
    }
    pleats
}

fn moved(pleats: Vec<Laid>, flat: Length, finished: Length) -> Vec<Laid> {
    pleats
        .into_iter()
        .map(|laid| laid.moved(flat, finished))
        .collect()
}

fn mirrored(pleats: &[Laid], flat: Length, finished: Length) -> Vec<Laid> {
    pleats
        .iter()
        .rev()
        .map(|laid| laid.clone().mirrored(flat, finished))
        .collect()
}

/// Puts pleats and creases together, each crease with the number of its pleat.
fn numbered(laid: Vec<Laid>, flat: Length, finished: Length) -> Pleating {
    let mut pleating = Pleating {
        flat,
        finished,
        ..Pleating::default()
    };
    for (index, laid) in laid.into_iter().enumerate() {
        let creases = laid.creases.into_iter();
        pleating.creases.extend(creases.map(|crease| CreaseMade {
            pleat: index,
            ..crease
        }));
        pleating.drawn.extend(laid.drawn);
        pleating.pleats.push(laid.pleat);
    }
    pleating.creases.sort_by_key(|crease| crease.at);
    pleating
}
