//! A partial layout: some pieces behind the skyline, the others still to be laid.

use pelmet_measure::Length;

use super::skyline::{Skyline, Square, Valley};

/// Some of the pieces laid. Sizes are those of pieces with the gap beyond them.
#[derive(Clone, Debug)]
pub(super) struct PartialLayout {
    /// How far the cloth is used.
    pub skyline: Skyline,
    /// For each form, by number, how many are still to be laid.
    pub left: Vec<u32>,
    /// The cloth under the pieces laid.
    pub laid: Square,
    /// The cloth behind the skyline that no piece has.
    pub wasted: Square,
    /// The last piece laid, by its number in the history of the beam.
    pub last: Option<usize>,
}

impl PartialLayout {
    /// Nothing is laid, and so many of each form are left.
    pub(super) fn new(width: Length, left: Vec<u32>) -> PartialLayout {
        PartialLayout {
            skyline: Skyline::new(width),
            left,
            laid: 0,
            wasted: 0,
            last: None,
        }
    }

    /// Gives up a valley: nothing will lie in it.
    pub(super) fn waste(&mut self, valley: &Valley) {
        self.wasted = self.wasted.saturating_add(valley.lost());
        self.skyline.fill(valley);
    }

    /// Gives up every deepest valley that is narrower than what is left.
    ///
    /// It would be wasted anyway. Wasted at once, it shows in the rank, and two partial layouts that
    /// differ by nothing but such a valley are found to be the same.
    pub(super) fn waste_narrower_than(&mut self, width: Length) {
        while let Some(valley) = self.skyline.lowest()
            && !valley.is_flat()
            && valley.width() < width
        {
            self.waste(&valley);
        }
    }

    /// A number that is the same for partial layouts with the same skyline and the same pieces left, and
    /// hardly ever for others: should two others share it, one of them is lost to the search and nothing
    /// worse happens. What they have wasted is the same too, for as much cloth lies behind as under the
    /// pieces.
    pub(super) fn fingerprint(&self) -> u64 {
        let left = self.left.iter().map(|left| u64::from(*left));
        let skyline = self.skyline.segments().iter().flat_map(|segment| {
            [segment.from, segment.used].map(|length| length.nanometres().cast_unsigned())
        });
        left.chain(skyline).fold(0, |print, value| {
            let stirred = (print ^ value).wrapping_mul(0x9E37_79B9_7F4A_7C15);
            stirred ^ (stirred >> 29)
        })
    }
}
