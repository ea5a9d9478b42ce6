//! How simply a layout is cut: in rows straight across the cloth, or piece by piece.

use pelmet_measure::Length;

use crate::{Piece, Placed};

/// How many pieces lie in bands that are not a row. `placed` is in cutting order.
pub(crate) fn out_of_rows(pieces: &[Piece], placed: &[Placed]) -> usize {
    let bands = bands(pieces, placed);
    let out_of_row = bands.iter().filter(|band| !band.is_row(pieces, placed));
    out_of_row.map(|band| band.placed.len()).sum()
}

/// Pieces that no cut straight across parts.
pub(crate) struct Band {
    pub bolt: u32,
    /// Where the first of them begins, and where the last ends.
    pub from: Length,
    pub end: Length,
    /// The pieces, by index among those placed.
    pub placed: Vec<usize>,
}

/// The bands of a layout, each as short as it can be with no piece across its ends. `placed` is in
/// cutting order.
pub(crate) fn bands(pieces: &[Piece], placed: &[Placed]) -> Vec<Band> {
    let mut bands: Vec<Band> = Vec::new();
    for (index, laid) in placed.iter().enumerate() {
        let Some(piece) = pieces.get(laid.piece) else {
            continue;
        };
        let end = laid.along + piece.length;
        match bands.last_mut() {
            Some(band) if band.bolt == laid.bolt && laid.along < band.end => {
                band.end = band.end.max(end);
                band.placed.push(index);
            }
            _ => bands.push(Band {
                bolt: laid.bolt,
                from: laid.along,
                end,
                placed: vec![index],
            }),
        }
    }
    bands
}

impl Band {
    /// Whether its pieces all lie side by side.
    pub(crate) fn is_row(&self, pieces: &[Piece], placed: &[Placed]) -> bool {
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
}
