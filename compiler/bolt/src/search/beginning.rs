//! The beginning of a layout: some pieces behind the front, the others still to be laid.

use pelmet_measure::Length;

use super::front::{Front, Square, Valley};

/// Some of the pieces laid. Sizes are those of pieces with the gap beyond them.
#[derive(Clone, Debug)]
pub(super) struct Beginning {
    pub front: Front,
    /// How many of each form are left.
    pub left: Vec<u32>,
    /// The cloth under the pieces laid.
    pub laid: Square,
    /// The cloth behind the front that no piece has.
    pub wasted: Square,
    /// The last piece laid, by its number in the history of all beginnings.
    pub last: Option<usize>,
}

impl Beginning {
    /// Nothing is laid, and so many of each form are left.
    pub(super) fn new(width: Length, left: Vec<u32>) -> Beginning {
        Beginning {
            front: Front::new(width),
            left,
            laid: 0,
            wasted: 0,
            last: None,
        }
    }

    /// Gives up a valley.
    pub(super) fn waste(&mut self, valley: &Valley) {
        self.wasted = self.wasted.saturating_add(valley.lost());
        self.front.fill(valley);
    }

    /// Gives up every deepest valley that is narrower than what is left.
    pub(super) fn waste_narrower_than(&mut self, width: Length) {
        while let Some(valley) = self.front.lowest()
            && !valley.is_flat()
            && valley.width() < width
        {
            self.waste(&valley);
        }
    }

    /// A number that is the same for beginnings with the same front and the same pieces left, and
    /// hardly ever for others.
    pub(super) fn fingerprint(&self) -> u64 {
        let left = self.left.iter().map(|left| u64::from(*left));
        let front = self.front.stretches().iter().flat_map(|stretch| {
            [stretch.from, stretch.used].map(|length| length.nanometres().cast_unsigned())
        });
        left.chain(front).fold(0, |print, value| {
            let stirred = (print ^ value).wrapping_mul(0x9E37_79B9_7F4A_7C15);
            stirred ^ (stirred >> 29)
        })
    }
}
