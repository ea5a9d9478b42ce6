//! What the overlaps of each two pieces count.

/// What an overlap counts at first, and what it gains at most each time it is still there.
pub(super) const FIRST_WEIGHT: u64 = 8;

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
