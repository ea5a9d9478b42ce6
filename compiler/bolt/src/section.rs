//! Which stretches of a bolt are folded lengthwise on the table, and which lie open.
//!
//! The bolt is cut straight across between two stretches. Where pieces are cut on the fold, an edge of
//! the cloth is turned over by just as much as they need: the fold is their middle, the turned half
//! lies on the other, and whatever lies beside them is cut from a single layer.

use pelmet_measure::Length;

use crate::rows::{Band, bands};
use crate::{Cloth, Piece, Placed};

/// A stretch of a bolt that lies on the table in one way.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub struct Section {
    /// Which bolt it is on, from 0.
    pub bolt: u32,
    /// Where it begins, from the start of the bolt.
    pub from: Length,
    /// Where the bolt is cut straight across after it.
    pub to: Length,
    /// Where the cloth is folded to bring its left edge over, from the left end of the usable width.
    pub left_fold: Option<Length>,
    /// Where it is folded to bring its right edge over, from the left end of the usable width.
    pub right_fold: Option<Length>,
}

impl Section {
    /// Whether a piece that lies here is cut from doubled cloth.
    #[must_use]
    pub fn doubles(&self, piece: &Piece, placed: &Placed) -> bool {
        let middle = Some(middle(piece, placed));
        let is_here = placed.bolt == self.bolt && self.from <= placed.along;
        let is_on_fold = piece.on_fold && (middle == self.left_fold || middle == self.right_fold);
        is_here && placed.along < self.to && is_on_fold
    }
}

/// The middle of a piece, from the left end of the usable width.
fn middle(piece: &Piece, placed: &Placed) -> Length {
    placed.across + piece.width.divided(2)
}

/// All stretches in order along the bolts; none where no piece is cut on the fold. `placed` is in
/// cutting order.
pub(crate) fn sections(cloth: &Cloth, pieces: &[Piece], placed: &[Placed]) -> Vec<Section> {
    let mut sections: Vec<Section> = Vec::new();
    if !pieces.iter().any(|piece| piece.on_fold) {
        return sections;
    }
    for band in bands(pieces, placed) {
        let lying = Lying::of(cloth, pieces, placed, &band);
        let (left_fold, right_fold) = lying.folds();
        match sections.last_mut() {
            Some(last)
                if (last.bolt, last.left_fold, last.right_fold)
                    == (band.bolt, left_fold, right_fold) =>
            {
                last.to = band.end;
            }
            last => {
                let before = last.filter(|last| last.bolt == band.bolt);
                let from = before.map_or(Length::ZERO, |last| last.to);
                sections.push(Section {
                    bolt: band.bolt,
                    from,
                    to: band.end,
                    left_fold,
                    right_fold,
                });
            }
        }
    }
    sections
}

/// The pieces of a stretch between two cuts straight across.
struct Lying<'run> {
    usable: Length,
    pieces: Vec<(&'run Piece, &'run Placed)>,
}

impl<'run> Lying<'run> {
    fn of(
        cloth: &Cloth,
        pieces: &'run [Piece],
        placed: &'run [Placed],
        band: &Band,
    ) -> Lying<'run> {
        let lying = |index: &usize| {
            let placed = placed.get(*index)?;
            Some((pieces.get(placed.piece)?, placed))
        };
        Lying {
            usable: cloth.usable_width,
            pieces: band.placed.iter().filter_map(lying).collect(),
        }
    }

    /// Where the cloth may be folded from the left and from the right.
    fn folds(&self) -> (Option<Length>, Option<Length>) {
        let left = self.fold(|placed, piece| (placed.across, placed.across + piece.width));
        let right = self.fold(|placed, piece| {
            let right = self.usable - placed.across;
            (right - piece.width, right)
        });
        (left, right.filter(|right| left != Some(*right)))
    }

    /// A fold such that all that the turned half reaches is cut on it; `sides` are how far a piece
    /// begins and ends from the edge that is turned over.
    fn fold(&self, sides: impl Fn(&Placed, &Piece) -> (Length, Length)) -> Option<Length> {
        let begin = |(piece, placed): &(&Piece, &Placed)| sides(placed, piece).0;
        let first = self.pieces.iter().min_by_key(|it| begin(it))?;
        let at = middle(first.0, first.1);
        let (from, to) = sides(first.1, first.0);
        let is_cut_on_it =
            |piece: &Piece, placed: &Placed| piece.on_fold && middle(piece, placed) == at;
        let mut reached = self.pieces.iter().filter(|it| begin(it) < from + to);
        reached
            .all(|(piece, placed)| is_cut_on_it(piece, placed))
            .then_some(at)
    }
}

/// Brings pieces cut on the fold to the edges of the cloth, where it can be folded, wherever they lie
/// in a row straight across the cloth that may be cut in any order: one to the left, another to the
/// right. `placed` is in cutting order.
pub(crate) fn bring_to_edges(cloth: &Cloth, pieces: &[Piece], placed: &mut [Placed]) {
    if !pieces.iter().any(|piece| piece.on_fold) {
        return;
    }
    let bands = bands(pieces, placed);
    for (index, band) in bands.iter().enumerate() {
        let before = index.checked_sub(1).and_then(|before| bands.get(before));
        let after = bands.get(index.saturating_add(1));
        if keeps_its_gap(cloth, before, Some(band))
            && keeps_its_gap(cloth, Some(band), after)
            && is_free_row(cloth, pieces, placed, band)
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
/// other, wherever they lie across: pieces that lie apart across may come nearer along.
fn keeps_its_gap(cloth: &Cloth, one: Option<&Band>, next: Option<&Band>) -> bool {
    let both = one.zip(next).filter(|(one, next)| one.bolt == next.bolt);
    both.is_none_or(|(one, next)| one.end + cloth.gap <= next.from)
}

/// Whether the pieces of a band lie in a row and may change places in it.
fn is_free_row(cloth: &Cloth, pieces: &[Piece], placed: &[Placed], band: &Band) -> bool {
    let is_held = |index: &usize| {
        let piece = placed.get(*index).and_then(|it| pieces.get(it.piece));
        piece.is_none_or(|piece| piece.phase_across.is_some() && cloth.repeat_across.is_some())
    };
    let flaws = cloth.flaws_of(band.bolt);
    let mut flaws = flaws.filter(|flaw| flaw.from < band.end && band.from < flaw.to);
    band.is_row(pieces, placed) && !band.placed.iter().any(is_held) && flaws.next().is_none()
}

/// The places across of the pieces of a row, once those cut on the fold are brought to its edges;
/// none where they do not all have room then.
fn at_edges(
    cloth: &Cloth,
    pieces: &[Piece],
    placed: &[Placed],
    band: &Band,
) -> Vec<(usize, Length)> {
    let lying = Lying::of(cloth, pieces, placed, band);
    let numbered = band.placed.iter().zip(&lying.pieces);
    let mut row: Vec<(usize, &Piece, Length)> = numbered
        .map(|(index, (piece, placed))| (*index, *piece, placed.across))
        .collect();
    // The widest is first turned over, and what is not cut on the fold keeps its order.
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
    if let Some((index, piece, _)) = to_right {
        let across = cloth.usable_width - piece.width;
        places.push((index, across));
        free = if free <= across {
            free
        } else {
            Length::LARGEST
        };
    }
    let has_room = on_fold > 0 && free <= cloth.usable_width + cloth.gap;
    if has_room { places } else { Vec::new() }
}

#[cfg(test)]
mod tests {
    use pelmet_measure::Length;

    use super::bring_to_edges;
    use crate::{Cloth, Piece, Placed};

    /// A piece on the fold lies right of the middle, and below it, on the left, one that begins so far
    /// along: the first comes to the left edge only where it keeps the gap there too.
    #[test]
    fn a_row_is_moved_only_where_it_keeps_the_gap_to_the_next() {
        for (along, across) in [(210, 600), (219, 600), (220, 0)] {
            let cloth = Cloth {
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
            let piece = Piece {
                width: Length::millimetres(300),
                length: Length::millimetres(200),
                quantity: 1,
                phase_along: None,
                phase_across: None,
                outline: None,
                on_fold: false,
            };
            let on_fold = Piece {
                on_fold: true,
                ..piece.clone()
            };
            let at = |piece, along, across| Placed {
                piece,
                copy: 0,
                bolt: 0,
                across: Length::millimetres(across),
                along: Length::millimetres(along),
                turned: false,
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
