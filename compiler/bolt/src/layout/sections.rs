//! Which stretches of a bolt are folded lengthwise on the table, and which lie open.
//!
//! The bolt is cut straight across between two stretches. Where pieces are cut on the fold, an edge of
//! the cloth is turned over by just as much as they need: the fold is their middle, the turned half
//! lies on the other, and whatever lies beside them is cut from a single layer.

use pelmet_measure::Length;

use super::bands::{LayoutBand, bands};
use super::placed::Placed;
use crate::given::{LayoutCloth, LayoutPiece};

/// A stretch of a bolt that lies on the table in one way.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub struct BoltSection {
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

impl BoltSection {
    /// Whether a piece lies here and is cut from doubled cloth: on one of the folds, not beside them.
    #[must_use]
    pub fn doubles(&self, piece: &LayoutPiece, placed: &Placed) -> bool {
        let middle = Some(middle(piece, placed));
        let is_here = placed.bolt == self.bolt && self.from <= placed.along;
        let is_on_fold = piece.on_fold && (middle == self.left_fold || middle == self.right_fold);
        is_here && placed.along < self.to && is_on_fold
    }
}

/// The middle of a piece, from the left end of the usable width.
fn middle(piece: &LayoutPiece, placed: &Placed) -> Length {
    placed.across + piece.width.divided(2)
}

/// All stretches in order along the bolts; none where no piece is cut on the fold. `placed` is in
/// cutting order.
///
/// Bands that follow each other with the same folds are one stretch: the cloth stays on the table as it
/// lies. A stretch begins where the one before it ends, and not where its first piece does, so that the
/// stretches of a bolt cover it up to the last piece and each is cut off with one cut.
pub(super) fn sections(
    cloth: &LayoutCloth,
    pieces: &[LayoutPiece],
    placed: &[Placed],
) -> Vec<BoltSection> {
    let mut sections: Vec<BoltSection> = Vec::new();
    if !pieces.iter().any(|piece| piece.on_fold) {
        return sections;
    }
    for band in bands(pieces, placed) {
        let (left_fold, right_fold) = OnTable::of(cloth, pieces, placed, &band).folds();
        match sections.last_mut() {
            Some(last)
                if (last.bolt, last.left_fold, last.right_fold)
                    == (band.bolt, left_fold, right_fold) =>
            {
                last.to = band.to;
            }
            last => {
                let before = last.filter(|last| last.bolt == band.bolt);
                let from = before.map_or(Length::ZERO, |last| last.to);
                sections.push(BoltSection {
                    bolt: band.bolt,
                    from,
                    to: band.to,
                    left_fold,
                    right_fold,
                });
            }
        }
    }
    sections
}

/// The pieces between two cuts straight across, as they lie on the table.
struct OnTable<'run> {
    usable: Length,
    pieces: Vec<(&'run LayoutPiece, &'run Placed)>,
}

impl<'run> OnTable<'run> {
    fn of(
        cloth: &LayoutCloth,
        pieces: &'run [LayoutPiece],
        placed: &'run [Placed],
        band: &LayoutBand,
    ) -> OnTable<'run> {
        let lying = |index: &usize| {
            let placed = placed.get(*index)?;
            Some((pieces.get(placed.piece)?, placed))
        };
        OnTable {
            usable: cloth.usable_width,
            pieces: band.placed.iter().filter_map(lying).collect(),
        }
    }

    /// Where the cloth may be folded from the left and from the right. A row of one piece in the middle
    /// could be folded from either side; once is enough.
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
    ///
    /// The piece that begins nearest the edge decides: folded anywhere but along its middle, the turned
    /// half would lie on it or leave it in two halves that are no image of each other. The edge then
    /// comes to lie as far beyond its middle as it was before it, at `from + to`. Every piece that begins
    /// before that is under the turned half, or in it, and would be cut double: so each must be cut on
    /// this very fold, as those are that lie one behind the other along it.
    fn fold(&self, sides: impl Fn(&Placed, &LayoutPiece) -> (Length, Length)) -> Option<Length> {
        let begin = |(piece, placed): &(&LayoutPiece, &Placed)| sides(placed, piece).0;
        let first = self.pieces.iter().min_by_key(|it| begin(it))?;
        let at = middle(first.0, first.1);
        let (from, to) = sides(first.1, first.0);
        let is_cut_on_it =
            |piece: &LayoutPiece, placed: &Placed| piece.on_fold && middle(piece, placed) == at;
        let mut reached = self.pieces.iter().filter(|it| begin(it) < from + to);
        reached
            .all(|(piece, placed)| is_cut_on_it(piece, placed))
            .then_some(at)
    }
}
