//! How simply a layout is cut: in rows straight across the cloth, or piece by piece.

use pelmet_measure::Length;

use super::placed::Placed;
use crate::given::{LayoutCloth, LayoutPiece};

/// Pieces that no cut straight across the cloth parts: what lies between two cuts that go from selvage
/// to selvage (guillotine cuts).
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct LayoutBand {
    /// Which bolt it is cut from, from 0.
    pub bolt: u32,
    /// Where the first of its pieces begins, from the start of the bolt.
    pub from: Length,
    /// Where the last of them ends, from the start of the bolt.
    pub to: Length,
    /// Its pieces, by index into [`Layout::placed`](crate::Layout::placed), along the bolt and then
    /// across it.
    pub placed: Vec<usize>,
}

/// The bands of a layout, each as short as it can be with no piece across its ends. `placed` is in
/// cutting order.
pub(super) fn bands(pieces: &[LayoutPiece], placed: &[Placed]) -> Vec<LayoutBand> {
    let mut bands: Vec<LayoutBand> = Vec::new();
    for (index, laid) in placed.iter().enumerate() {
        let Some(piece) = pieces.get(laid.piece) else {
            continue;
        };
        let to = laid.along + piece.length;
        match bands.last_mut() {
            Some(band) if band.bolt == laid.bolt && laid.along < band.to => {
                band.to = band.to.max(to);
                band.placed.push(index);
            }
            _ => bands.push(LayoutBand {
                bolt: laid.bolt,
                from: laid.along,
                to,
                placed: vec![index],
            }),
        }
    }
    bands
}

/// How many pieces lie in bands that are not a row. `placed` is in cutting order.
pub(super) fn out_of_rows(pieces: &[LayoutPiece], placed: &[Placed]) -> usize {
    let bands = bands(pieces, placed);
    let out_of_row = bands.iter().filter(|band| !band.is_row(pieces, placed));
    out_of_row.map(|band| band.placed.len()).sum()
}

impl LayoutBand {
    /// Whether its pieces all lie side by side.
    pub(super) fn is_row(&self, pieces: &[LayoutPiece], placed: &[Placed]) -> bool {
        let sides = |index: &usize| {
            let laid = placed.get(*index)?;
            let width = pieces.get(laid.piece)?.width;
            Some((laid.across, laid.across + width))
        };
        let mut sides: Vec<(Length, Length)> = self.placed.iter().filter_map(sides).collect();
        sides.sort_unstable();
        let mut pairs = sides.iter().zip(sides.iter().skip(1));
        pairs.all(|((_, right), (left, _))| right <= left)
    }

    /// Whether its pieces lie in a row and may change places in it: neither the print nor a flaw says
    /// where across the cloth they lie.
    pub(super) fn is_free_row(
        &self,
        cloth: &LayoutCloth,
        pieces: &[LayoutPiece],
        placed: &[Placed],
    ) -> bool {
        let is_held = |index: &usize| {
            let piece = placed.get(*index).and_then(|it| pieces.get(it.piece));
            piece.is_none_or(|piece| piece.phase_across.is_some() && cloth.repeat_across.is_some())
        };
        let mut flaws = cloth.flaws_of(self.bolt);
        self.is_row(pieces, placed)
            && !self.placed.iter().any(is_held)
            && !flaws.any(|flaw| flaw.lies_between(self.from, self.to))
    }
}
