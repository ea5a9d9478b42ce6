//! What the overlaps of each two pieces count.

use pelmet_measure::Length;

/// What an overlap counts at first, and what it gains at most each time it is still there.
pub(super) const FIRST_WEIGHT: u64 = 8;

/// An overlap weighed by how often it has been in the way.
pub(super) type Weighed = u64;

/// An overlap so deep, weighed.
pub(super) fn weighed(depth: Length, weight: u64) -> Weighed {
    u64::try_from(depth.nanometres())
        .unwrap_or(0)
        .saturating_mul(weight)
}

/// For each two pieces, by index, what their overlap counts.
pub(super) struct Weights {
    pieces: usize,
    /// Row by row, each pair twice, so that a row has all that concerns one piece.
    rows: Vec<u64>,
}

impl Weights {
    /// The first weights for so many pieces.
    pub(super) fn first(pieces: usize) -> Weights {
        Weights {
            pieces,
            rows: vec![FIRST_WEIGHT; pieces.saturating_mul(pieces)],
        }
    }

    /// What the overlaps of one piece count, with each other piece in turn.
    pub(super) fn of(&self, piece: usize) -> &[u64] {
        let start = piece.saturating_mul(self.pieces);
        let row = start..start.saturating_add(self.pieces);
        self.rows.get(row).unwrap_or_default()
    }

    /// Lets the overlap of two pieces count for more.
    pub(super) fn add(&mut self, one: usize, other: usize, more: u64) {
        for (row, column) in [(one, other), (other, one)] {
            let at = row.saturating_mul(self.pieces).saturating_add(column);
            if let Some(weight) = self.rows.get_mut(at) {
                *weight = weight.saturating_add(more);
            }
        }
    }
}
