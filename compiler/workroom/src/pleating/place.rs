//! Placing the settled pieces of a rule on the strip.

use pelmet_measure::Length;

use super::ROUNDING;
use super::halves::Halves;
use super::laid::Laid;
use super::piece::{Measure, Piece, PieceKind, sum};
use crate::{Crease, FoldPlace, PleatKind, PleatMatter, Pleating};

/// Places the pieces on a strip of this flat width.
pub(super) fn pleating(
    mut pieces: Vec<Piece>,
    halves: Halves,
    flat: Length,
) -> Result<Pleating, PleatMatter> {
    let part_flat = halves.part(flat);
    let bare = walk(&pieces, halves, flat)?;
    if bare.needed > part_flat + ROUNDING {
        return Err(PleatMatter::TakesTooMuch { flat, taken: halves.whole(bare.needed) });
    }
    give_rest(&mut pieces, part_flat - bare.at);
    let take_up = sum(&pieces, Measure::TakeUp);
    let described = folded_in_order(walk(&pieces, halves, flat)?.laid);
    let described = if halves.from_centre() {
        let right = flat - part_flat;
        let left_take_up = halves.panel_take_up(take_up) - take_up;
        described.into_iter().map(|laid| laid.moved(right, right - left_take_up)).collect()
    } else {
        described
    };
    let finished = flat - halves.panel_take_up(take_up);
    Ok(numbered(on_whole_strip(described, halves, flat, finished), flat, finished))
}

/// How far the work has come along the part described.
#[derive(Default)]
struct Walk {
    laid: Vec<Laid>,
    /// Where the next piece starts.
    at: Length,
    /// The flat cloth that must be there: to the last crease of a placed pleat, to the end of
    /// anything else.
    needed: Length,
    last_fold: Length,
    /// The plain cloth that ends here.
    plain: Option<usize>,
}

fn walk(pieces: &[Piece], halves: Halves, flat: Length) -> Result<Walk, PleatMatter> {
    let mut walk = Walk::default();
    for piece in pieces {
        match &piece.kind {
            PieceKind::Plain(plain) => {
                walk.at += plain.now;
                walk.plain = plain.now.is_positive().then_some(piece.step);
                walk.needed = walk.needed.max(walk.at);
            }
            PieceKind::Rest(length) => {
                walk.at += *length;
                walk.plain = None;
            }
            PieceKind::Pleat { place, .. } => {
                let laid = walk.laid_at(piece, *place, halves, flat);
                walk.pass(laid, place.is_some())?;
            }
        }
    }
    Ok(walk)
}

impl Walk {
    fn laid_at(
        &self,
        piece: &Piece,
        place: Option<FoldPlace>,
        halves: Halves,
        flat: Length,
    ) -> Laid {
        let fold_at = place.map(|place| match place {
            FoldPlace::At(at) => at,
            FoldPlace::On(on) => self.last_fold + on,
        });
        let mut laid = unplaced(piece, fold_at.unwrap_or(self.at), fold_at.is_some(), halves, flat);
        laid.pleat.step = piece.step;
        let first_fold = laid.pleat.folds.first().map_or(Length::ZERO, |fold| fold.crease);
        let from = fold_at.map_or(self.at, |fold_at| fold_at - first_fold);
        laid.moved(from, from)
    }

    fn pass(&mut self, laid: Laid, placed: bool) -> Result<(), PleatMatter> {
        let overlap = self.at - laid.pleat.from;
        if let Some(first) = self.plain
            && overlap > ROUNDING
        {
            let second = laid.pleat.step;
            return Err(PleatMatter::PleatsRunTogether { first, second, amount: overlap });
        }
        let last_crease = laid.creases.last().map_or(laid.pleat.to, |crease| crease.at);
        self.needed = self.needed.max(if placed { last_crease } else { laid.pleat.to });
        self.at = self.at.max(laid.pleat.to);
        self.last_fold = laid.pleat.folds.last().map_or(self.last_fold, |fold| fold.crease);
        self.plain = None;
        self.laid.push(laid);
        Ok(())
    }
}

/// A pleat from position 0; `at` is where its fold, or for one that is not placed its start, lies.
fn unplaced(piece: &Piece, at: Length, placed: bool, halves: Halves, flat: Length) -> Laid {
    let PieceKind::Pleat { kind, depth, face, .. } = &piece.kind else {
        return Laid::knife(Length::ZERO, crate::Toward::Left);
    };
    let depth = depth.now;
    let face = face.map_or(depth * 2, |face| face.now);
    match kind {
        PleatKind::Knife { toward } => {
            let middle = if placed { at } else { at + depth };
            Laid::knife(depth, halves.toward(*toward, middle, flat))
        }
        PleatKind::Box { .. } => Laid::boxed(depth, face),
        PleatKind::Inverted { .. } => Laid::inverted(depth, face),
    }
}
