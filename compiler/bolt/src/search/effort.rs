//! How much work a search for a better layout may do.

use crate::given::LayoutPiece;

/// A budget for the search, in steps: a step is one look at how two pieces lie to each other.
///
/// Steps are counted, not seconds, so that a layout is the same on every machine.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub struct SearchEffort(u64);

/// What [`SearchEffort::usual`] allows for each piece, beside what it allows for any job.
const USUAL_STEPS_PER_PIECE: u64 = 300_000;

/// What [`SearchEffort::usual`] allows for any job, however few its pieces.
const FEWEST_USUAL_STEPS: u64 = 3_000_000;

/// What [`SearchEffort::usual`] allows at most, however many they are.
const MOST_USUAL_STEPS: u64 = 300_000_000;

impl SearchEffort {
    /// No search at all: the rule of thumb and shelves only.
    pub const NONE: SearchEffort = SearchEffort(0);

    /// The usual effort for so many pieces: more for more of them, up to a limit.
    #[must_use]
    pub fn usual(pieces: usize) -> SearchEffort {
        let pieces = u64::try_from(pieces).unwrap_or(u64::MAX);
        SearchEffort(
            pieces
                .saturating_mul(USUAL_STEPS_PER_PIECE)
                .saturating_add(FEWEST_USUAL_STEPS)
                .min(MOST_USUAL_STEPS),
        )
    }

    /// The usual effort for these pieces, every copy counted.
    #[must_use]
    pub fn usual_for(pieces: &[LayoutPiece]) -> SearchEffort {
        let count = |piece: &LayoutPiece| usize::try_from(piece.quantity).unwrap_or(usize::MAX);
        SearchEffort::usual(pieces.iter().map(count).fold(0, usize::saturating_add))
    }

    /// An effort that ends after so many steps, whatever is found by then.
    #[must_use]
    pub const fn steps(steps: u64) -> SearchEffort {
        SearchEffort(steps)
    }

    /// The most steps that may be spent.
    #[must_use]
    pub const fn count(self) -> u64 {
        self.0
    }

    /// As many steps, so many times over.
    #[must_use]
    pub const fn times(self, times: u64) -> SearchEffort {
        SearchEffort(self.0.saturating_mul(times))
    }
}
