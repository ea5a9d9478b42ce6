//! Brings pieces cut on the fold to the edges of the cloth, where it can be folded for them.

use pelmet_measure::Length;

use super::bands::{LayoutBand, bands};
use super::placed::Placed;
use crate::given::{LayoutCloth, LayoutPiece};

/// Brings pieces cut on the fold to the edges of the cloth wherever they lie in a row straight across
/// it that may be cut in any order: one to the left, another to the right. `placed` is in cutting order.
///
/// It comes after the search because it may only move pieces across: no row gets longer by it, so the
/// layout found stays as short as it is.
pub(super) fn bring_to_edges(cloth: &LayoutCloth, pieces: &[LayoutPiece], placed: &mut [Placed]) {
    if !pieces.iter().any(|piece| piece.on_fold) {
        return;
    }
    let bands = bands(pieces, placed);
    for (index, band) in bands.iter().enumerate() {
        let before = index.checked_sub(1).and_then(|before| bands.get(before));
        let after = bands.get(index.saturating_add(1));
        if keeps_its_gap(cloth, before, Some(band))
            && keeps_its_gap(cloth, Some(band), after)
            && band.is_free_row(cloth, pieces, placed)
        {
            for (index, across) in at_edges(cloth, pieces, placed, band) {
                if let Some(it) = placed.get_mut(index) {
                    it.across = across;
                }
            }
        }
    }
}

/// Whether two bands lie so far apart that every piece of one keeps the gap to every piece of the
/// other, wherever they lie across. Bands may lie closer than the gap: a piece of one and a piece of the
/// other that keep it across may come nearer along, and would not once one of them is moved.
fn keeps_its_gap(cloth: &LayoutCloth, one: Option<&LayoutBand>, next: Option<&LayoutBand>) -> bool {
    let both = one.zip(next).filter(|(one, next)| one.bolt == next.bolt);
    both.is_none_or(|(one, next)| one.to + cloth.gap <= next.from)
}

/// The places across of the pieces of a row, by index among those placed, once those cut on the fold
/// are brought to its edges; none where they do not all have room then.
fn at_edges(
    cloth: &LayoutCloth,
    pieces: &[LayoutPiece],
    placed: &[Placed],
    band: &LayoutBand,
) -> Vec<(usize, Length)> {
    let with_piece = |index: &usize| {
        let placed = placed.get(*index)?;
        Some((*index, pieces.get(placed.piece)?, placed.across))
    };
    let mut row: Vec<(usize, &LayoutPiece, Length)> =
        band.placed.iter().filter_map(with_piece).collect();
    // The widest is turned over on the left, the next on the right: so most cloth is cut double. Any
    // others cut on the fold lie open beside the first, and what is not cut on it keeps its order.
    row.sort_by_key(|(_, piece, across)| {
        let width = if piece.on_fold {
            piece.width
        } else {
            Length::ZERO
        };
        (-width, *across)
    });
    let on_fold = row.iter().filter(|(_, piece, _)| piece.on_fold).count();
    let to_right = (on_fold >= 2).then(|| row.remove(1));
    let mut free = Length::ZERO;
    let mut places = Vec::with_capacity(band.placed.len());
    for (index, piece, _) in row {
        places.push((index, free));
        free += piece.width + cloth.gap;
    }
    // Pieces of one band that are apart along the cloth need not keep their gap across it: a row may be
    // too full for all its gaps, and then it stays as it is.
    let has_room = match to_right {
        Some((index, piece, _)) => {
            let across = cloth.usable_width - piece.width;
            places.push((index, across));
            free <= across
        }
        None => on_fold > 0 && free <= cloth.usable_width + cloth.gap,
    };
    if has_room { places } else { Vec::new() }
}

#[cfg(test)]
mod tests {
    use pelmet_measure::Length;

    use super::super::placed::{Orientation, Placed};
    use super::bring_to_edges;
    use crate::given::{LayoutCloth, LayoutPiece};

    /// A piece on the fold lies right of the middle, and below it, on the left, one that begins so far
    /// along: the first comes to the left edge only where it keeps the gap there too.
    #[test]
    fn a_row_is_moved_only_where_it_keeps_the_gap_to_the_next() {
        for (along, across) in [(210, 600), (219, 600), (220, 0)] {
            let cloth = LayoutCloth {
                usable_width: Length::millimetres(1000),
                gap: Length::millimetres(20),
                repeat_along: None,
                repeat_across: None,
                half_drop: false,
                one_way: false,
                bolt_length: None,
                buying_step: Length::millimetres(100),
                flaws: Vec::new(),
            };
            let piece = LayoutPiece {
                width: Length::millimetres(300),
                length: Length::millimetres(200),
                quantity: 1,
                phase_along: None,
                phase_across: None,
                outline: None,
                on_fold: false,
            };
            let on_fold = LayoutPiece {
                on_fold: true,
                ..piece.clone()
            };
            let at = |piece, along, across| Placed {
                piece,
                copy: 0,
                bolt: 0,
                across: Length::millimetres(across),
                along: Length::millimetres(along),
                orientation: Orientation::Upright,
            };
            let mut placed = [at(0, 0, 600), at(1, along, 0)];
            bring_to_edges(&cloth, &[on_fold, piece], &mut placed);
            assert_eq!(
                placed.map(|it| it.across),
                [across, 0].map(Length::millimetres),
                "{along}"
            );
        }
    }
}
