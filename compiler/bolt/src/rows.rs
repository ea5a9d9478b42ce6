//! How simply a layout is cut: in rows straight across the cloth, or piece by piece.

use pelmet_measure::Length;

use crate::{Piece, Placed};

/// How many pieces lie in bands that are not a row, where a band is as short as it can be with no
/// piece across its ends, and the pieces of a row all lie side by side. `placed` is in cutting order.
pub(crate) fn out_of_rows(pieces: &[Piece], placed: &[Placed]) -> usize {
    let mut bands: Vec<Band> = Vec::new();
    for laid in placed {
        let Some(piece) = pieces.get(laid.piece) else {
            continue;
        };
        let end = laid.along + piece.length;
        let sides = (laid.across, laid.across + piece.width);
        match bands.last_mut() {
            Some(band) if band.bolt == laid.bolt && laid.along < band.end => {
                band.end = band.end.max(end);
                band.sides.push(sides);
            }
            _ => bands.push(Band {
                bolt: laid.bolt,
                end,
                sides: vec![sides],
            }),
        }
    }
    bands.iter_mut().map(Band::out_of_row).sum()
}

/// Pieces that no cut straight across parts.
struct Band {
    bolt: u32,
    end: Length,
    /// The left and right edges of its pieces.
    sides: Vec<(Length, Length)>,
}

impl Band {
    fn out_of_row(&mut self) -> usize {
        self.sides.sort_unstable();
        let mut pairs = self.sides.iter().zip(self.sides.iter().skip(1));
        if pairs.all(|((_, right), (left, _))| right <= left) {
            0
        } else {
            self.sides.len()
        }
    }
}
